using System.CommandLine;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;

namespace Witnessmark.Book;

/// <summary><c>witnessmark book check [DIR...]</c>: the bench book, with what shops put over it, held against itself.</summary>
internal static class BookCommand
{
    public static Command Create()
    {
        var folders = new Argument<DirectoryInfo[]>("DIR")
        {
            Arity = ArgumentArity.ZeroOrMore,
            Description =
                "Folders of book files; each later one overrides the earlier ones name by name. None: the book that comes with the program.",
        };
        var check = new Command("check", "Tell every mistake in a bench book, or what is in it.") { folders };
        check.SetAction(parsed => Check(parsed.GetValue(folders) ?? []));
        return new Command("book", "The bench book: everything that is looked at, measured, corrected or tightened.")
        {
            check,
        };
    }

    private static int Check(DirectoryInfo[] given)
    {
        var folders = given is [] ? [new DirectoryInfo(Path.Combine(AppContext.BaseDirectory, "book"))] : given;
        if (Absent(folders) is { Count: > 0 } absent)
        {
            foreach (var line in absent)
                Console.Error.WriteLine(line);
            return ExitCode.Malformed;
        }
        var read = BookFiles.Read(folders.Select(Files));
        if (read.Book is { } book)
        {
            BookReport.Write(Console.Out, book, read.Overridden);
            return 0;
        }
        foreach (var mistake in read.Mistakes)
            Console.Error.WriteLine(mistake);
        Console.Error.WriteLine(read.Mistakes.Count == 1 ? "1 mistake." : $"{read.Mistakes.Count} mistakes.");
        return ExitCode.Malformed;
    }

    private static List<string> Absent(DirectoryInfo[] folders) =>
        [
            .. folders.Where(f => !f.Exists).Select(f => $"{f}: there is no such folder; right would be a folder of book files"),
            .. folders
                .Where(f => f.Exists && !f.EnumerateFiles("*.toml").Any())
                .Select(f => $"{f}: no file ends in .toml; right would be a folder of book files"),
        ];

    /// <summary>Named as a person finds them from here.</summary>
    private static IEnumerable<SourceText> Files(DirectoryInfo folder) =>
        folder
            .EnumerateFiles("*.toml")
            .Select(f => new SourceText(
                Path.GetRelativePath(Directory.GetCurrentDirectory(), f.FullName).Replace('\\', '/'),
                File.ReadAllText(f.FullName)
            ));
}
