using Witnessmark.Bench.Searching;

namespace Witnessmark.Bench.Tests.Searching;

public class SearchRankingTests
{
    private static readonly SearchEntry Slack = new(
        SearchKind.Point,
        "Chain slack, lower run",
        "Fell 640 · Job 412",
        "slack"
    );

    private static readonly SearchEntry Wear = new(SearchKind.Point, "Chain wear", "Fell 640 · Job 412", "wear");

    private static readonly SearchEntry Job = new(SearchKind.Job, "Fell 640", "Service", "job")
    {
        Numbers = ["412-ab", "M-QX 88"],
    };

    private static readonly SearchEntry Calculation = new(
        SearchKind.Calculation,
        "Toolchain check",
        "looks at the slack of a toolchain",
        "calculation"
    )
    {
        Also = "tightening",
    };

    [Fact]
    public void All_words_have_to_match_wherever_they_stand()
    {
        Assert.Equal(["slack", "wear"], Paths("chain 412"));
        Assert.Equal(["slack"], Paths("412 sla"));
        Assert.Empty(Paths("chain 412 disc"));
    }

    [Fact]
    public void What_begins_a_word_goes_before_what_stands_inside_one() =>
        Assert.Equal(["slack", "wear", "calculation"], Paths("chain", Calculation, Slack, Wear));

    [Fact]
    public void What_is_called_so_goes_before_what_is_only_told() =>
        Assert.Equal(["job", "slack"], Paths("fell", Slack, Job));

    [Fact]
    public void One_word_inside_a_word_puts_the_whole_entry_behind() =>
        Assert.Equal(["slack", "calculation"], Paths("chain slack", Calculation, Slack));

    [Fact]
    public void Of_equals_the_order_of_the_list_stays()
    {
        Assert.Equal(["wear", "slack"], Paths("chain", Wear, Slack));
        Assert.Equal(["slack", "wear"], Paths("chain", Slack, Wear));
    }

    [Theory]
    [InlineData("mqx88")]
    [InlineData("M-QX")]
    [InlineData("qx 88")]
    [InlineData("m qx-88")]
    [InlineData("412ab")]
    public void A_number_is_found_however_it_is_spaced(string typed) => Assert.Equal(["job"], Paths(typed, Slack, Job));

    [Fact]
    public void The_beginning_of_a_number_goes_before_its_middle()
    {
        var other = Job with { Path = "other", Numbers = ["1412"] };
        Assert.Equal(["job", "other"], Paths("412", other, Job));
    }

    [Fact]
    public void What_is_not_shown_can_be_found_too() => Assert.Equal(["calculation"], Paths("TIGHT"));

    [Fact]
    public void A_later_beginning_counts_though_the_word_stood_inside_one_before() =>
        Assert.Equal(
            ["twice", "calculation"],
            Paths("chain", Calculation, Slack with { Title = "Toolchain for a chain", Path = "twice" })
        );

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData(" · – ")]
    public void Without_a_word_nothing_is_found(string typed) => Assert.Empty(Paths(typed));

    [Fact]
    public void No_more_than_asked_for_are_shown_and_the_rest_is_counted()
    {
        var hits = SearchRanking.Of("chain", Enumerable.Repeat(Slack, 40), 12);
        Assert.Equal((12, 40, 28), (hits.Shown.Count, hits.All, hits.More));
    }

    private static IEnumerable<string> Paths(string typed, params SearchEntry[] entries) =>
        SearchRanking
            .Of(typed, entries.Length > 0 ? entries : [Slack, Wear, Job, Calculation], 12)
            .Shown.Select(e => e.Path);
}
