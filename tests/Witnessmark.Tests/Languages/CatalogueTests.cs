using System.Text.RegularExpressions;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Tests.Languages;

/// <summary>The German catalogue: every text that the program says has one, and it has no text that nobody says.</summary>
public partial class CatalogueTests
{
    private static readonly string[] Speaking =
    [
        "Witnessmark.Handbook",
        "Witnessmark.Bench",
        "Witnessmark.Paper",
        "Witnessmark.Client",
        "witnessmark",
    ];

    private static readonly IReadOnlyList<PoEntry> German = PoFile.Read(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "languages", "de.po"))
    );

    private static readonly IReadOnlyList<SpokenKey> Said =
    [
        .. Speaking.SelectMany(name => SpokenIn.Assembly(Path.Combine(AppContext.BaseDirectory, $"{name}.dll"))),
    ];

    /// <summary>What is said as a word of data: files and entries hold it in English.</summary>
    private static IEnumerable<string> Words =>
        [.. Urgencies.ByWords.Keys, .. MeansWords.ByWords.Keys, .. WordsOfBook.All(Book)];

    private static Workbench Book { get; } = ReadBook();

    [Fact]
    public void Every_sentence_of_the_program_has_a_German_text()
    {
        var had = German.Select(e => (e.Key, e.Many, e.Context)).ToHashSet();
        None(
            Said.Where(s => HasWords(s.Key) && !had.Contains((s.Key, s.Many, s.Context)))
                .Select(s => $"{s.Where}: {s.Key}")
                .Distinct()
        );
    }

    [Fact]
    public void Every_text_of_the_bench_book_has_a_German_text()
    {
        var had = German.Where(e => e.Many is null && e.Context is null).Select(e => e.Key).ToHashSet();
        None(Words.Where(HasWords).Where(w => !had.Contains(w)).Distinct());
    }

    [Fact]
    public void No_German_text_is_stale_or_there_twice()
    {
        var said = Said.Select(s => (s.Key, s.Many, s.Context)).ToHashSet();
        var words = Words.ToHashSet();
        None(
            German.Where(e => !said.Contains((e.Key, e.Many, e.Context)) && !words.Contains(e.Key)).Select(e => e.Key)
        );
        None(German.GroupBy(e => (e.Key, e.Many, e.Context)).Where(g => g.Count() > 1).Select(g => g.Key.Key));
    }

    [Fact]
    public void Every_German_text_has_the_places_of_its_English_one_and_some_words()
    {
        None(
            German
                .Where(e => e.Texts.Any(t => t.Trim().Length == 0 || Lacks(e, t)))
                .Select(e => $"line {e.Line}: {e.Key}")
        );
    }

    [Fact]
    public void Sentences_were_found_in_every_assembly_that_speaks()
    {
        Assert.True(Said.Count > 900, $"{Said.Count} sentences.");
        Assert.Contains(Said, s => s is { Key: "1 point", Many: "{0} points" });
        Assert.Contains(Said, s => s is { Key: "Right", Context: "not wrong" });
        Assert.Contains(Said, s => s.Key == "{0} added");
    }

    /// <summary>Names all that there are, for there is work to do for each.</summary>
    private static void None(IEnumerable<string> found) =>
        Assert.True(!found.Any(), string.Join('\n', found.Prepend($"{found.Count()} found:")));

    // the form for one may say its number in a word
    private static bool Lacks(PoEntry entry, string text)
    {
        var (wanted, has) = (Places(entry.Many ?? entry.Key), Places(text));
        return entry.Many is not null && text == entry.Texts[0] ? !wanted.IsSupersetOf(has) : !wanted.SetEquals(has);
    }

    private static HashSet<string> Places(string text) => [.. Place().Matches(text).Select(m => m.Value)];

    private static bool HasWords(string key) => Place().Replace(key, "").Any(char.IsAsciiLetter);

    private static Workbench ReadBook()
    {
        string[] folders = ["book", Path.Combine("demo", "sheets")];
        var files = folders
            .SelectMany(f => Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, f), "*.toml"))
            .Append(Path.Combine(AppContext.BaseDirectory, "demo", "shop.toml"));
        var (bench, mistakes) = WorkbenchFiles.Read(
            files.Select(f => new SourceText(
                Path.GetRelativePath(AppContext.BaseDirectory, f).Replace('\\', '/').Replace("demo/", ""),
                File.ReadAllText(f)
            ))
        );
        Assert.Empty(mistakes);
        return bench!;
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();
}
