using Witnessmark.Calc;

namespace Witnessmark.Papers;

/// <summary>Puts a paper on disk and says where.</summary>
internal static class PaperFile
{
    /// <summary>The exit code.</summary>
    public static int Put(string path, byte[] bytes, string what)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{path}: cannot be written: {wrong.Message}");
            return ExitCode.Malformed;
        }
        Console.Out.WriteLine($"{what}: {path}");
        return ExitCode.Ok;
    }
}
