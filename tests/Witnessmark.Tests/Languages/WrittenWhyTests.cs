using Witnessmark.Bench.Planning;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Tests.Languages;

/// <summary>Why a point is in a plan stands in the entry in English; a German reader reads it in German.</summary>
public class WrittenWhyTests
{
    private static readonly Tongue German = Tongue.German(
        new(PoFile.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "languages", "de.po"))))
    );

    [Theory]
    [InlineData(
        "Due, every 1000 km by the maker (handbook p. 12): not on record: unknown, treat as due.",
        "Fällig, alle 1000 km, wie der Hersteller (handbook p. 12) sagt: Nicht hinterlegt: unbekannt, als fällig behandeln."
    )]
    [InlineData(
        "Outside at the last visit, 2026-04-01: 38.5 ± 1 mm. Rear axle nut is in the plan, and asks for this again.",
        "Außerhalb beim letzten Besuch, 01.04.2026: 38,5 ± 1 mm. Hinterachsmutter ist im Plan und verlangt das hier neu."
    )]
    public void A_reason_that_was_put_together_is_known_again(string written, string german) =>
        Assert.Equal(german, WrittenWhy.Of(written).In(German));

    [Fact]
    public void Each_reason_of_several_stands_by_itself_and_a_persons_words_stay_together()
    {
        const string First =
            "Campaign 26-0412 (rear brake hose) concerns this machine; its notice says not to ride until it is done.";
        const string Second = "Campaign 26-0413 (stand switch) may concern this machine: check with the maker.";
        const string Own = "The owner hears a knock. It comes at 3000.";
        Assert.Equal(
            [First, Second, Own],
            WrittenWhy.Each($"{First} {Second} {Own}").Select(w => w.In(Tongue.English))
        );
        Assert.StartsWith("Aktion 26-0413", WrittenWhy.Each($"{First} {Second}")[1].In(German));
        Assert.Empty(WrittenWhy.Each(""));
    }

    [Theory]
    [InlineData("The owner hears a knock. It comes at 3000.")]
    [InlineData("Ask Bo (he knows): 2.5 turns")]
    public void What_a_person_wrote_stays_as_it_is(string written) =>
        Assert.Equal(written, WrittenWhy.Of(written).In(German));

    // every "or" can part it: without keeping what is known of a piece this would not end within a lifetime
    [Fact]
    public void A_text_that_can_be_taken_apart_in_many_ways_is_read_all_the_same()
    {
        var many = string.Join(" or ", Enumerable.Range(1, 40).Select(n => $"knock {n}"));
        Assert.Equal(
            $"So gelassen 01.04.2026: {many.Replace(" or ", " oder ")}",
            WrittenWhy.Of($"Left as it was 2026-04-01: {many}").In(German)
        );
    }

    [Fact]
    public void English_is_the_entry_as_it_stands() =>
        Assert.Equal(
            "Due, every 1000 km by the maker: the first time.",
            WrittenWhy.Of("Due, every 1000 km by the maker: the first time.").In(Tongue.English)
        );

    // whoever words a reason anew, or adds one, has to let its reader know it again
    [Fact]
    public void Every_reason_that_planning_writes_is_known_again()
    {
        var bench = SpokenIn.Assembly(Path.Combine(AppContext.BaseDirectory, "Witnessmark.Bench.dll"));
        var handbook = SpokenIn.Assembly(Path.Combine(AppContext.BaseDirectory, "Witnessmark.Handbook.dll"));
        string[] said = ["CampaignReasons", "ConditionReasons", "DueReasons", "NecessaryReasons", "WearReasons"];
        var written = bench
            .Where(s => said.Contains(s.Where.Split('.')[0]))
            .Concat(handbook.Where(s => s.Where.StartsWith("DueWords.", StringComparison.Ordinal)))
            .Where(s => s.Where != "DueWords.Of" && s.Key.Contains('{'));
        var known = bench.Where(s => s.Where.StartsWith("WrittenWhy.", StringComparison.Ordinal));
        Assert.Empty(written.Select(s => s.Many ?? s.Key).Except(known.Select(s => s.Many ?? s.Key)));
    }
}
