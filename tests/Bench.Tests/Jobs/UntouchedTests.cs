using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>A point at which nothing was done yet is not reckoned through: it comes out as if it were.</summary>
public class UntouchedTests
{
    [Fact]
    public void An_untouched_point_is_what_one_with_a_note_is_without_the_note()
    {
        var untouched = new AtWork().Arrives();
        // work at neighbours must not show at it
        untouched.Reads("drain-plug", "25 Nm").Turns("chain-slack", "0.5");
        foreach (var point in untouched.State.Points.Where(p => p.Readings.Count + p.Corrections.Count == 0))
        {
            var noted = new AtWork().Arrives().Reads("drain-plug", "25 Nm").Turns("chain-slack", "0.5");
            noted.Writes(EntryKind.Note, EntryBody.Note(point.Point.Id, "looked at"));
            var reckoned = noted[point.Point.Id];
            Assert.Single(reckoned.Notes);
            Same(reckoned, point);
        }
    }

    // lists are equal by what is in them, which a record does not ask
    private static void Same(PointState reckoned, PointState untouched)
    {
        Assert.Equal(reckoned.Readings, untouched.Readings);
        Assert.Equal(reckoned.Corrections, untouched.Corrections);
        Assert.Equal(reckoned.AgainBecause, untouched.AgainBecause);
        Assert.Equal(reckoned.Disputed, untouched.Disputed);
        Assert.Equal(reckoned.Advice?.Headline.ToString(), untouched.Advice?.Headline.ToString());
        Assert.Equal(
            reckoned with
            {
                Readings = untouched.Readings,
                Corrections = untouched.Corrections,
                AgainBecause = untouched.AgainBecause,
                Disputed = untouched.Disputed,
                Advice = untouched.Advice,
                Notes = untouched.Notes,
                Figure = untouched.Figure,
            },
            untouched
        );
        Assert.Equal(reckoned.Figure?.Key, untouched.Figure?.Key);
    }
}
