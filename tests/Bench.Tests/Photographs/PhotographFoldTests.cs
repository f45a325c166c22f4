using System.Text.Json;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Photographs;

public class PhotographFoldTests
{
    private static readonly Picture One = new(new string('a', 64), 1600, 1200, 300_000);

    [Fact]
    public void Photographs_of_machine_point_and_figure_stand_in_order_and_can_be_struck()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Photograph, EntryBody.Photograph(null, null, One, "left side as it came"));
        work.Writes(EntryKind.Photograph, EntryBody.Photograph("leaks", null, One, "a drop at the drain plug"));
        work.Writes(EntryKind.Photograph, EntryBody.Photograph("front-pads", "pads.front", One, "page 71"));
        Assert.Equal(
            [("", null), ("leaks", null), ("front-pads", "pads.front")],
            work.State.Photographs.Select(p => (p.Point, p.Figure))
        );
        Assert.Equal(One, work.State.Photographs[0].Picture);
        Assert.Equal(2, work.Strikes(work.Last.Id).State.Photographs.Count);
        Assert.Empty(work.State.NotUnderstood);
    }

    [Fact]
    public void A_photograph_bears_on_no_release()
    {
        var work = new AtWork().Arrives();
        while (work.State.Points.FirstOrDefault(p => p.Marked is null) is { } open)
            work.DoesWell(open.Point.Id);
        work.Releases("Ines Tallow");
        work.Writes(EntryKind.Photograph, EntryBody.Photograph(null, null, One, "as it left"));
        Assert.NotNull(work.State.Release);
    }

    [Theory]
    [InlineData("\"type\":\"image/jpeg\"", "\"type\":\"image/png\"", "is not image/jpeg")]
    [InlineData("aaaa", "AAAA", "is not 64 digits")]
    [InlineData("\"width\":1600", "\"width\":0", "width: less than 1")]
    [InlineData("\"height\":1200", "\"height\":-1", "height: less than 1")]
    [InlineData("\"bytes\":300000", "\"bytes\":\"many\"", "bytes: a whole number is missing")]
    [InlineData("\"shows\":", "\"show\":", "shows: text is missing")]
    public void A_body_that_is_none_is_kept_and_said(string old, string other, string said)
    {
        var body = EntryBody.Photograph(null, null, One, "x").GetRawText();
        Assert.Contains(old, body);
        using var broken = JsonDocument.Parse(body.Replace(old, other));
        var work = new AtWork().Arrives().Writes(EntryKind.Photograph, broken.RootElement.Clone());
        Assert.Contains(said, Assert.Single(work.State.NotUnderstood).Why);
        Assert.Empty(work.State.Photographs);
    }
}
