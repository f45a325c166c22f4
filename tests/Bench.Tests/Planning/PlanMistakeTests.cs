using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>What would make a plan impossible is told when the files are read, with file and line.</summary>
public class PlanMistakeTests
{
    private const string Oil = "book/engine-oil.toml";

    [Theory]
    [InlineData("hands = \"0 min\"", "\"0 min\"")]
    [InlineData("hands = \"1441 min\"", "\"1441 min\"")]
    [InlineData("hands = \"-4 min\"", "\"-4 min\"")]
    public void A_point_done_in_no_time_or_in_more_than_a_day(string written, string found)
    {
        const string old = "hands = \"4 min\"\nafter = [\"drain-plug\", \"oil-filter\"]";
        var mistake = Assert.Single(
            DemoFiles.MistakesWith(Oil, old, written + "\nafter = [\"drain-plug\", \"oil-filter\"]")
        );
        Assert.Equal((found, Oil), (mistake.Found, mistake.File));
        Assert.StartsWith("a time above 0 min, at most 1440 min", mistake.Right);
    }

    [Theory]
    [InlineData("hands = \"1440 min\"")]
    [InlineData("hands = \"1 s\"")]
    public void The_longest_and_a_very_short_time_are_taken(string written)
    {
        const string old = "hands = \"4 min\"\nafter = [\"drain-plug\", \"oil-filter\"]";
        Assert.Empty(DemoFiles.MistakesWith(Oil, old, written + "\nafter = [\"drain-plug\", \"oil-filter\"]"));
    }

    [Fact]
    public void Points_that_wait_for_each_other_are_told_as_a_ring()
    {
        var mistakes = DemoFiles.MistakesWith(
            Oil,
            "after = [\"engine-warm-up\", \"oil-found\"]",
            "after = [\"engine-warm-up\", \"oil-found\", \"oil-first-fill\"]"
        );
        Assert.Contains(
            mistakes,
            m => m.File == Oil && m.Found.StartsWith("a ring:") && m.Found.Contains("oil-first-fill")
        );
    }

    [Fact]
    public void A_state_that_no_one_can_reach_beside_another_is_told_at_the_point()
    {
        var mistakes = DemoFiles.MistakesWith(
            "book/road-test.toml",
            "reach = [\"road ready\"]",
            "reach = [\"road ready\", \"rear stand\"]"
        );
        Assert.Contains(mistakes, m => m.Found == "\"road ready\" and \"rear stand\" at the same time");
    }

    [Theory]
    [InlineData("[planning]\nwear-probability = \"0 %\"", "\"0 %\"")]
    [InlineData("[planning]\nwear-probability = \"100 %\"", "\"100 %\"")]
    [InlineData("[planning]\nnext-visit-distance = \"0 km\"", "\"0 km\"")]
    [InlineData("[planning]\nnext-visit-months = 0", "the number 0")]
    [InlineData("[planning]\nnext-visit = 1", "unknown key \"next-visit\"")]
    public void A_shops_settings_have_bounds(string written, string found)
    {
        var mistakes = DemoFiles.MistakesWith(
            "shop.toml",
            "[machines.fell-640-0412]",
            written + "\n\n[machines.fell-640-0412]"
        );
        Assert.Equal(found, Assert.Single(mistakes).Found);
    }

    [Fact]
    public void A_lead_is_one_of_the_people() =>
        Assert.Equal(
            "\"Ines Talow\" is not one of the people",
            Assert
                .Single(DemoFiles.MistakesWith("shop.toml", "leads = [\"Ines Tallow\"]", "leads = [\"Ines Talow\"]"))
                .Found
        );
}
