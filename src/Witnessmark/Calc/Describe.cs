using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary><c>calc describe NAME</c>.</summary>
internal static class Describe
{
    /// <summary>Prints the description, or puts it into a page.</summary>
    public static int Run(string name, Func<Calculation, string> form, string? page)
    {
        if (Calculations.Named(name) is not { } calculation)
            return Malformed(Ask.Unknown(name));
        if (page is null)
        {
            Console.Out.Write(form(calculation));
            return ExitCode.Ok;
        }
        if (!File.Exists(page))
            return Malformed($"{page}: there is no such file.");
        if (GeneratedBlock.Replaced(File.ReadAllText(page), Description.Markdown(calculation)) is not { } text)
            return Malformed(
                $"{page}: no generated block between \"{GeneratedBlock.Begin}\" and \"{GeneratedBlock.End}\"."
            );
        File.WriteAllText(page, text);
        return ExitCode.Ok;
    }

    private static int Malformed(string message)
    {
        Console.Error.WriteLine(message);
        return ExitCode.Malformed;
    }
}
