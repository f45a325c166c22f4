using System.Text.RegularExpressions;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Book;

public partial class DocumentationTests
{
    private static readonly string[] Pages = ["docs/figure-sheets.md", "docs/bench-book.md"];

    [Fact]
    public void The_examples_of_both_pages_make_one_workbench_without_a_mistake()
    {
        var examples = Pages.SelectMany(p => Blocks(p, "toml")).Select(Source).ToArray();
        Assert.Equal(
            ["book/example.toml", "own-book/example.toml", "sheets/example.toml", "shop.toml"],
            examples.Select(e => e.Name).Order(StringComparer.Ordinal)
        );
        Assert.Empty(WorkbenchFiles.Read(examples).Mistakes);
    }

    [Fact]
    public void The_mistakes_that_the_page_shows_are_those_that_are_told()
    {
        var wrong = Source(Assert.Single(Blocks(Pages[0], "toml wrong")));
        var told = WorkbenchFiles.Read([wrong]).Mistakes.Where(m => m.File == wrong.Name).Select(m => m.ToString());
        Assert.Equal(Assert.Single(Blocks(Pages[0], "mistakes")).TrimEnd('\n').Split('\n'), told);
    }

    [Fact]
    public void The_mistakes_of_a_book_that_the_page_shows_are_those_that_are_told()
    {
        var wrong = Source(Assert.Single(Blocks(Pages[1], "toml wrong")));
        var told = Bench
            .Book.BookFiles.Read([
                [wrong],
            ])
            .Mistakes.Select(m => m.ToString());
        Assert.Equal(Assert.Single(Blocks(Pages[1], "mistakes")).TrimEnd('\n').Split('\n'), told);
    }

    [Fact]
    public void Every_key_of_a_point_is_named_in_the_page()
    {
        // what the reader knows it says itself, beside a key that it does not know
        var slip = "[points.x]\nzzzzzzzzzz = 1\n";
        var known = Bench
            .Book.BookFiles.Read([
                [new("book/x.toml", slip)],
            ])
            .Mistakes.Single(m => m.Found.Contains("zzz"));
        var keys = known.Right.Replace("one of ", "").Split(", ");
        Assert.True(keys.Length > 15);
        Assert.All(keys, k => Assert.Contains($"| `{k}` |", DemoFiles.Text(Pages[1])));
    }

    [Fact]
    public void The_change_that_the_page_shows_can_stand_at_the_end_of_its_sheet()
    {
        var sheet = Source(Blocks(Pages[0], "toml").Single(b => b.Contains("[sheet]")));
        var (read, mistakes) = Bench.Figures.FigureSheets.Read(
            sheet with
            {
                Text = sheet.Text + "\n" + Assert.Single(Blocks(Pages[0], "toml changes")),
            }
        );
        Assert.Empty(mistakes);
        Assert.Equal(read!.Figures["chain.slack"].InSheet, Assert.Single(read.Changes).Now);
    }

    [Fact]
    public void Every_setting_geometry_and_fact_is_named_in_the_pages()
    {
        var settings = Bench.Book.CorrectionSettings.All.SelectMany(c => c.Value.Keys.Prepend(c.Key));
        var book = DemoFiles.Text(Pages[1]);
        Assert.All(settings, s => Assert.Contains(s, book.Replace("`", "")));
        var sheets = DemoFiles.Text(Pages[0]);
        Assert.All(
            Bench
                .Figures.MachineFacts.Geometry.Keys.Concat(Bench.Figures.MachineFacts.Counts)
                .Concat(Bench.Figures.MachineFacts.Truths)
                .Concat(Bench.Figures.MachineFacts.Traits.Keys)
                .Concat(Bench.Figures.MachineFacts.Traits.Values.SelectMany(words => words))
                .Concat(Bench.Figures.MachineFacts.Fitted),
            n => Assert.Contains(n, sheets)
        );
    }

    private static SourceText Source(string block) => new(block.Split('\n')[0].TrimStart('#', ' '), block);

    private static IEnumerable<string> Blocks(string page, string language) =>
        Fence().Matches(DemoFiles.Text(page)).Where(m => m.Groups[1].Value == language).Select(m => m.Groups[2].Value);

    [GeneratedRegex("^```([^\n]+)\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
