using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.AtThePoint;

public class LegalMinimumTests
{
    // The table of minimum tread depths, src/Handbook/ReferenceData/minimum-tread-depth.csv, read by hand
    [Theory]
    [InlineData("DE", "≥ 1.6 mm", "law: DE, StVZO § 36", "Germany")]
    [InlineData("AT", "≥ 1.6 mm", "law: AT, KDV § 4 Abs. 4", "Austria")]
    [InlineData("FR", "≥ 1 mm", "law: FR, Arrêté du 29 juillet 1970 art. 9", "France")]
    [InlineData("US-MD", "≥ 0.03125 in", "law: US-MD, COMAR 11.14.03.05", "Maryland")]
    public void The_law_of_the_shops_place_is_offered_with_its_clause(
        string place,
        string demand,
        string origin,
        string name
    )
    {
        var law = Tread(Under(place))!;
        Assert.Equal((demand, origin, name), (law.Figure.Short, law.Figure.Origin.Text, law.Place));
        Assert.True(law.Figure.Origin.Binding);
        Assert.Equal(place == "US-MD", law.Figure.AsPrinted == "1/32 in");
        Assert.Equal(place, law.Figure.Origin.Jurisdiction);
        Assert.NotNull(law.Figure.When);
    }

    // the table has no row for Spain, and none for the whole of the United States
    [Theory]
    [InlineData("ES")]
    [InlineData("US")]
    public void There_is_none_where_the_table_has_none(string place) => Assert.Null(Tread(Under(place)));

    [Fact]
    public void There_is_none_while_the_shop_does_not_say_whose_law_counts() =>
        Assert.Null(Tread(DemoFiles.Bench with { Workshop = DemoFiles.Bench.Workshop with { Jurisdiction = null } }));

    [Fact]
    public void There_is_none_for_a_quad_and_none_for_a_figure_that_no_law_gives()
    {
        var bench = Under("DE");
        var machine = bench.Workshop.Machines.Values.First();
        var sheet = bench.Newest(machine.Sheet)!;
        var quad = machine with { Traits = new Dictionary<string, string> { ["kind"] = "quad" } };
        Assert.Null(LegalMinimum.Of(bench.Book.FigureKeys["tyre.tread"], bench, sheet, quad));
        Assert.Null(LegalMinimum.Of(bench.Book.FigureKeys["tyre.age"], bench, sheet, machine));
    }

    [Theory]
    [InlineData("Germany")]
    [InlineData("de")]
    [InlineData("DE-")]
    [InlineData("US-MARY")]
    [InlineData("DEU")]
    [InlineData("UK")]
    [InlineData(" DE")]
    public void What_is_no_code_is_told(string written)
    {
        var mistake = Assert.Single(
            DemoFiles.MistakesWith("shop.toml", "jurisdiction = \"GB\"", $"jurisdiction = \"{written}\"")
        );
        Assert.Equal(($"\"{written}\"", Jurisdiction.Right), (mistake.Found, mistake.Right));
        Assert.Equal(DemoFiles.LineOf("shop.toml", "jurisdiction"), mistake.Line);
    }

    [Fact]
    public void A_law_of_the_book_that_no_calculation_knows_is_told() =>
        Assert.Contains(
            "\"thread-depth\"",
            Assert
                .Single(
                    DemoFiles.MistakesWith("book/figure-keys.toml", "law = \"tread-depth\"", "law = \"thread-depth\"")
                )
                .Found
        );

    // A country's law counts in its parts; a part's law only there.
    [Theory]
    [InlineData("GB", null)]
    [InlineData("GB-SCT", null)]
    [InlineData("DE", "This is the law of GB; this workshop works under the law of DE. Look up what that one demands.")]
    [InlineData(
        "GBX",
        "This is the law of GB; this workshop works under the law of GBX. Look up what that one demands."
    )]
    public void A_sheet_that_rests_on_the_law_of_another_place_is_told(string place, string? said)
    {
        var bench = DemoFiles.Bench;
        var tread = bench.Newest("fell-640")!.Figures["tyre.tread"];
        var shop = bench.Workshop with { Jurisdiction = new(place) };
        Assert.Equal(said, LawElsewhere.Said(tread, shop));
        Assert.Equal(
            said is null ? [] : [$"The figure sheet \"fell-640\", figure \"tyre.tread\": {said}"],
            LawElsewhere.In(bench with { Workshop = shop })
        );
    }

    [Theory]
    [InlineData("DE", true)]
    [InlineData("GB", false)]
    [InlineData("US-MD", false)]
    public void The_law_of_the_Union_counts_in_its_members(string place, bool counts) =>
        Assert.Equal(counts, new Jurisdiction(place).Has("EU"));

    [Fact]
    public void A_shop_that_does_not_say_whose_law_counts_is_asked_where_a_figure_rests_on_one()
    {
        var shop = DemoFiles.Bench.Workshop with { Jurisdiction = null };
        var figures = DemoFiles.Bench.Newest("fell-640")!.Figures;
        Assert.Contains("does not say whose law counts", LawElsewhere.Said(figures["tyre.tread"], shop));
        Assert.Null(LawElsewhere.Said(figures["tyre.age"], shop));
    }

    private static LegalMinimum? Tread(Workbench bench)
    {
        var machine = bench.Workshop.Machines.Values.First();
        return LegalMinimum.Of(bench.Book.FigureKeys["tyre.tread"], bench, bench.Newest(machine.Sheet)!, machine);
    }

    private static Workbench Under(string place) =>
        DemoFiles.Bench with
        {
            Workshop = DemoFiles.Bench.Workshop with { Jurisdiction = Jurisdiction.Read(place) },
        };
}
