using Witnessmark.Calc;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Tests.Calc;

public class PageTests
{
    public static IEnumerable<TheoryDataRow<string>> Names =>
        Calculations.All.Select(c => new TheoryDataRow<string>(c.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_generated_block_of_a_page_is_what_the_code_says(string name)
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Pages", $"{name}.md"));
        // When this fails: witnessmark calc describe NAME --page docs/handbook/NAME.md
        Assert.Equal(Description.Markdown(Calculations.Named(name)!), GeneratedBlock.In(page));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_calculation_documents_formula_units_source_and_validity_in_this_order(string name)
    {
        var text = Description.Text(Calculations.Named(name)!);
        int[] places =
        [
            .. ((string[])["Formula", "Units", "Source", "Valid when"]).Select(t =>
                text.IndexOf($"\n\n{t}\n  ", StringComparison.Ordinal)
            ),
        ];
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void A_page_without_a_place_for_the_block_is_left_alone() =>
        Assert.Null(GeneratedBlock.Replaced("# vin\n", "x"));
}
