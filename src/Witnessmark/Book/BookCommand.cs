using System.CommandLine;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;

namespace Witnessmark.Book;

/// <summary><c>witnessmark book check [DIR...]</c>: the bench book, with what shops put over it, held against itself.</summary>
internal static class BookCommand
{
    public static Command Create() =>
        new("book", "The bench book: everything that is looked at, measured, corrected or tightened.")
        {
            Over("check", "Tell every mistake in a bench book, or what is in it.", BookReport.Of),
            Over("points", "Print all points of a bench book as a page of Markdown.", (book, _) => PointsPage.Of(book)),
        };

    private static Command Over(
        string name,
        string description,
        Func<BenchBook, IReadOnlyList<Overridden>, string> said
    )
    {
        var folders = new Argument<DirectoryInfo[]>("DIR")
        {
            Arity = ArgumentArity.ZeroOrMore,
            Description =
                "Folders of book files; each later one overrides the earlier ones name by name. None: the book that comes with the program.",
        };
        var command = new Command(name, description) { folders };
        command.SetAction(parsed => Run(parsed.GetValue(folders) ?? [], said));
        return command;
    }

    private static int Run(DirectoryInfo[] given, Func<BenchBook, IReadOnlyList<Overridden>, string> said)
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
            Console.Out.Write(said(book, read.Overridden));
            return 0;
        }
        foreach (var mistake in read.Mistakes)
            Console.Error.WriteLine(mistake);
        Console.Error.WriteLine(read.Mistakes.Count == 1 ? "1 mistake." : $"{read.Mistakes.Count} mistakes.");
        return ExitCode.Malformed;
    }

    private static List<string> Absent(DirectoryInfo[] folders) =>
        [
            .. folders
                .Where(f => !f.Exists)
                .Select(f => $"{f}: there is no such folder; right would be a folder of book files"),
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
