namespace Witnessmark.Tests.Stock;

/// <summary>The demo workshop as a data folder.</summary>
internal static class DemoData
{
    public static void Into(string folder)
    {
        var program = AppContext.BaseDirectory;
        Copy(Path.Combine(program, "book"), Path.Combine(folder, "book"));
        Copy(Path.Combine(program, "demo", "sheets"), Path.Combine(folder, "sheets"));
        File.Copy(Path.Combine(program, "demo", "shop.toml"), Path.Combine(folder, "shop.toml"));
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from, "*.toml"))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
    }
}
