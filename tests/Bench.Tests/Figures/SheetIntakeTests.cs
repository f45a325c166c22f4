using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Figures;

public class SheetIntakeTests
{
    private static readonly SourceText Fell = DemoFiles.All.Single(s => s.Name == "sheets/fell-640.toml");
    private static readonly DateOnly Day = new(2026, 11, 25);

    [Fact]
    public void A_new_sheet_keeps_its_revision()
    {
        var (next, _) = SheetIntake.Take(null, Fell, "Bram Okello", Day, "new on the floor");
        var sheet = FigureSheets.Read(next!).Sheet!;
        Assert.Equal(4, sheet.Revision);
        Assert.Equal("new on the floor", Assert.Single(sheet.Changes).Why);
    }

    [Fact]
    public void A_known_sheet_becomes_the_next_revision_whatever_the_file_says()
    {
        var incoming = Fell with { Text = Fell.Text.Replace("13 to 32 mm", "14 to 32 mm").Replace("½ to", "⅝ to") };
        incoming = incoming with { Text = incoming.Text.Replace("also = \"⅝ to 1¼ in\"\n", "") };
        var (next, mistakes) = SheetIntake.Take(Fell, incoming, "Bram Okello", Day, "second edition");
        Assert.Empty(mistakes);
        var sheet = FigureSheets.Read(next!).Sheet!;
        Assert.Equal(5, sheet.Revision);
        var differing = SheetComparison.Of(FigureSheets.Read(Fell).Sheet!, sheet).Where(c => c.Differs);
        Assert.Equal("chain.slack", Assert.Single(differing).Key);
    }

    [Fact]
    public void The_same_text_is_nothing_new() =>
        Assert.Equal((null, []), SheetIntake.Take(Fell, Fell with { Text = Fell.Text.TrimEnd() }, "x", Day, "y"));

    [Fact]
    public void A_contradiction_between_two_printed_units_is_refused_with_both_converted()
    {
        var incoming = Fell with { Text = Fell.Text.Replace("½ to 1¼ in", "½ to 1 in") };
        var (next, mistakes) = SheetIntake.Take(Fell, incoming, "x", Day, "y");
        Assert.Null(next);
        var found = Assert.Single(mistakes).Found;
        Assert.Contains("25.4", found, StringComparison.Ordinal);
        Assert.Contains("1.26", found, StringComparison.Ordinal);
    }
}
