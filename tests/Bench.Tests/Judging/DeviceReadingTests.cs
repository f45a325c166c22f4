using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Judging;

/// <summary>Readings that the device took by itself.</summary>
public sealed class DeviceReadingTests
{
    private static readonly DeviceReading Heard = new(DeviceSense.Microphone, new(0.05, UnitTable.Named("Hz")));

    [Fact]
    public void The_uncertainty_of_the_reading_is_that_of_the_verdict()
    {
        var read = At("belt-tone")
            .Writes(EntryKind.Reading, EntryBody.Reading("belt-tone", ["88.52 Hz"], device: Heard));
        var current = read["belt-tone"].Current!;
        Assert.Equal(0.05, current.Opinion.StandardUncertainty!.Value, 1e-12);
        Assert.Equal("88.52 ± 0.1 Hz", current.Opinion.Shown);
        Assert.Equal("This device's microphone", current.Instrument?.Name);
    }

    // JCGM 100, 4.2.3: with three repeats their scatter counts too: s = 0.1, s²/3 + 0.05²
    [Fact]
    public void Repeats_add_their_scatter()
    {
        var read = At("belt-tone")
            .Writes(
                EntryKind.Reading,
                EntryBody.Reading("belt-tone", ["88.4 Hz", "88.5 Hz", "88.6 Hz"], device: Heard)
            );
        Assert.Equal(Math.Sqrt(0.01 / 3 + 0.0025), read["belt-tone"].Current!.Opinion.StandardUncertainty!.Value, 1e-9);
    }

    [Theory]
    [InlineData("""{"sense":"camera","uncertainty":"1 Hz"}""", "sense: \"camera\"")]
    [InlineData("""{"sense":"microphone","uncertainty":"much"}""", "uncertainty: \"much\"")]
    [InlineData("""{"sense":"microphone","uncertainty":"-1 Hz"}""", "less than nothing")]
    public void What_is_not_understood_is_kept_and_said(string device, string why)
    {
        var body = JsonDocument
            .Parse($$"""{"point":"belt-tone","raw":["88 Hz"],"device":{{device}}}""")
            .RootElement.Clone();
        var state = At("belt-tone").Writes(EntryKind.Reading, body).State;
        Assert.Contains(why, Assert.Single(state.NotUnderstood).Why);
    }

    // an older program reads the same entry as one without an instrument
    [Fact]
    public void Entries_without_it_read_as_before()
    {
        var body = EntryBody.Reading("belt-tone", ["88.52 Hz"], null, null);
        Assert.DoesNotContain("device", body.GetRawText());
        Assert.Null(At("belt-tone").Writes(EntryKind.Reading, body)["belt-tone"].Current!.Instrument);
    }

    [Fact]
    public void Where_instruments_need_dates_a_device_proves_no_safety_point() =>
        Assert.False(
            Witnessmark.Bench.Machines.Calibration.Proves(Heard.Instrument(datesNeeded: true), new(2026, 11, 25))
        );

    private static AtWork At(string point)
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        return new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                machine.Sheet,
                DemoFiles.Bench.Newest(machine.Sheet)!.Revision,
                "service",
                [new(point, "asked")]
            )
        );
    }
}
