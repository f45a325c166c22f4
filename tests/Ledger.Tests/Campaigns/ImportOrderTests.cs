using FsCheck.Xunit;
using Witnessmark.Bench.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>Neither the order of rows nor a second import changes anything.</summary>
public class ImportOrderTests
{
    private static readonly AskedMachine Fell = new("Tarnmoor", "Fell 640", 2024);

    // the louder of two contradicting rows of one file stays, then the later recorded one
    [Theory]
    [InlineData("No", "20260101", "Yes", "20250101", true)]
    [InlineData("Yes", "20250101", "No", "20260101", false)]
    [InlineData("No", "20250101", "No", "20260101", true)]
    [InlineData("No", "20260101", "No", "19010101", false)]
    public void Of_rows_that_contradict_each_other_one_stays_whatever_their_order(
        string ride,
        string day,
        string otherRide,
        string otherDay,
        bool other
    )
    {
        var (one, two) = (
            Row(defect: "one", ride: ride, recorded: day),
            Row(defect: "two", ride: otherRide, recorded: otherDay)
        );
        foreach (var rows in new[] { new[] { one, two }, [two, one], [two, one, two, one] })
        {
            using var kept = new Kept();
            Assert.Equal((1, rows.Length - 1), (kept.Import(rows).New, (int)kept.Import(rows).Duplicates));
            Assert.Equal(other ? "two" : "one", Assert.Single(kept.Store.Of(Fell)).Says.Defect);
            Assert.Equal(["1"], kept.Query("SELECT CAST(count(*) AS TEXT) FROM says"));
        }
    }

    [Property(MaxTest = 30)]
    public void Importing_again_changes_nothing_and_the_order_of_rows_does_not_matter(int seed)
    {
        var chance = new Random(seed);
        var lines = Lines(seed, 60).Concat(Contradicting(chance)).ToArray();
        using var kept = new Kept();
        var first = kept.Import(lines);
        var dump = kept.Dump();
        Assert.Equal(first.New, dump.Count);
        Assert.Equal(first.Rows, first.New + first.Duplicates + first.SetAside);
        Assert.Equal(first with { New = 0, Unchanged = first.New }, kept.Import(lines));
        Assert.Equal(dump, kept.Dump());
        chance.Shuffle(lines);
        Assert.Equal(first with { New = 0, Unchanged = first.New }, kept.Import(lines));
        using var shuffled = new Kept();
        Assert.Equal(first, shuffled.Import(lines));
        Assert.Equal(dump, shuffled.Dump());
    }

    // over an older store, too, neither counts nor contents hang on the order
    [Property(MaxTest = 20)]
    public void An_update_does_not_hang_on_the_order_either(int seed)
    {
        var chance = new Random(seed);
        var (before, after) = (Contradicting(chance), Contradicting(chance));
        using var one = new Kept();
        using var two = new Kept();
        one.Import(before);
        two.Import(before);
        var totals = one.Import(after);
        chance.Shuffle(after);
        Assert.Equal(totals, two.Import(after));
        Assert.Equal(one.Dump(), two.Dump());
        Assert.Equal(
            one.Query("SELECT hex(digest) FROM says ORDER BY 1"),
            two.Query("SELECT hex(digest) FROM says ORDER BY 1")
        );
    }
}
