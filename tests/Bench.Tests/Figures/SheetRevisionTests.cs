using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Figures;

public class SheetRevisionTests
{
    private static readonly SourceText Fell = DemoFiles.All.Single(s => s.Name == "sheets/fell-640.toml");
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly FigureDraft Slack = new("chain.slack", "range", "15 to 30 mm", "maker: handbook p. 88")
    {
        When = "rear stand",
    };

    [Fact]
    public void Only_the_figure_the_revision_and_the_change_differ()
    {
        var next = Set(Fell, Slack);
        var sheet = Read(next);
        Assert.Equal(5, sheet.Revision);
        Assert.Equal("15 – 30 mm", sheet.Figures["chain.slack"].Short);
        Assert.Null(sheet.Figures["chain.slack"].Also);
        var before = Read(Fell).Figures.Where(f => f.Key != "chain.slack").Select(f => f.Value.InSheet);
        Assert.Equal(before, sheet.Figures.Where(f => f.Key != "chain.slack").Select(f => f.Value.InSheet));
        var remarks = Fell.Text.Split('\n').Where(l => l.StartsWith('#'));
        Assert.Equal(remarks, next.Text.Split('\n').Where(l => l.StartsWith('#')));
    }

    [Fact]
    public void A_change_says_who_when_why_and_what_it_was()
    {
        var change = Assert.Single(Read(Set(Fell, Slack)).Changes);
        Assert.Equal((5, "chain.slack", "Ines Tallow", Day), (change.Revision, change.Figure, change.By, change.On));
        Assert.Equal("the page says \"88\"\nnow", change.Why);
        Assert.StartsWith("range 13 to 32 mm (½ to 1¼ in), rear stand", change.Was, StringComparison.Ordinal);
        Assert.Equal("range 15 to 30 mm, rear stand, maker: handbook p. 88", change.Now);
    }

    [Fact]
    public void A_figure_that_was_not_there_is_added_before_the_schedule()
    {
        var next = Set(Fell, new("axle.runout", "max", "0.3 mm", "shop"));
        Assert.Equal("≤ 0.3 mm", Read(next).Figures["axle.runout"].Short);
        Assert.Equal(Read(Fell).Schedule, Read(next).Schedule);
        Assert.Null(Assert.Single(Read(next).Changes).Was);
    }

    [Fact]
    public void Changes_add_up_over_revisions()
    {
        var twice = Set(Set(Fell, Slack), Slack with { Printed = "16 to 30 mm" });
        Assert.Equal([5, 6], Read(twice).Changes.Select(c => c.Revision));
        Assert.Equal(6, Read(twice).Revision);
        Assert.Equal(
            [6, 5],
            SheetHistory.Of([Read(Fell), Read(twice), Read(Set(Fell, Slack))]).Select(c => c.Revision)
        );
    }

    // every figure of the demo, written down again as it stands, gives itself
    [Fact]
    public void Every_figure_survives_being_written_down_again()
    {
        foreach (var figure in Read(Fell).Figures.Values)
            Assert.Equal(figure.InSheet, Read(Set(Fell, FigureDraft.Of(figure))).Figures[figure.Key].InSheet);
    }

    [Theory]
    [InlineData("30 to 15 mm", "maker: handbook p. 88", "swapped")]
    [InlineData("15 to 30", "maker: handbook p. 88", "the unit is missing")]
    [InlineData("15 to 30 mm", "maker: leaflet p. 1", "leaflet")]
    [InlineData("15 to 30 mm", "somebody", "somebody")]
    public void What_cannot_be_is_told_and_makes_no_revision(string printed, string origin, string told)
    {
        var (next, mistakes) = SheetRevision.Set(
            Fell,
            Slack with
            {
                Printed = printed,
                Origin = origin,
            },
            "Ines Tallow",
            Day,
            "why"
        );
        Assert.Null(next);
        Assert.Contains(mistakes, m => m.Found.Contains(told, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_that_looks_like_toml_stays_text()
    {
        const string odd = "\"]\n[figures.\"x\"]\nmin = \"1 mm\" # \\";
        var sheet = Read(Set(Fell, Slack with { When = odd }));
        Assert.Equal(odd, sheet.Figures["chain.slack"].When);
        Assert.False(sheet.Figures.ContainsKey("x"));
    }

    private static SourceText Set(SourceText file, FigureDraft draft)
    {
        var (next, mistakes) = SheetRevision.Set(file, draft, "Ines Tallow", Day, "the page says \"88\"\nnow");
        Assert.Empty(mistakes);
        return next!;
    }

    private static FigureSheet Read(SourceText file)
    {
        var (sheet, mistakes) = FigureSheets.Read(file);
        Assert.Empty(mistakes);
        return sheet!;
    }
}
