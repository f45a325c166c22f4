using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>A job carries what was known of its machine, so that it stays whole where nobody knows the register.</summary>
public class KnownMachineTests
{
    private static readonly Machine Stranger = new(
        "17",
        "Fell 640",
        "GZ0FE64C5PH000977",
        2023,
        "fell-640",
        8150,
        new(2025, 11, 3),
        new Dictionary<string, string> { ["winch"] = "true" },
        "Tarnmoor",
        null,
        "HL 977"
    );

    [Fact]
    public void A_machine_that_no_file_names_comes_back_as_it_was()
    {
        var machine = Arrived(Stranger).State.Arrival!.Machine;
        Assert.Equal(Stranger with { Traits = null }, machine with { Traits = null });
        Assert.Equal(Stranger.Traits, machine.Traits!);
    }

    [Fact]
    public void What_is_not_known_stays_unknown()
    {
        var bare = new Machine("18", "Scar", "", null, "fell-640", null, null, null, null, "FR-1932-77");
        Assert.Equal(bare, Arrived(bare).State.Arrival!.Machine);
        Assert.Equal("""{"name":"Scar","frame":"FR-1932-77"}""", Body(bare).GetProperty("known").GetRawText());
    }

    [Fact]
    public void The_body_has_the_agreed_form() =>
        Assert.Equal(
            """{"name":"Fell 640","vin":"GZ0FE64C5PH000977","plate":"HL 977","make":"Tarnmoor","year":2023,"distance":"8150 km","distanceOn":"2025-11-03","facts":{"winch":"true"}}""",
            Body(Stranger).GetProperty("known").GetRawText()
        );

    [Fact]
    public void What_was_known_then_counts_whatever_the_shops_file_says_since()
    {
        var own = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        Assert.Equal("Fell 640, blue", Arrived(own with { Name = "Fell 640, blue" }).State.Arrival!.Machine.Name);
        Assert.Equal(own, new AtWork().Arrives().State.Arrival!.Machine); // an older arrival asks the file
    }

    [Theory]
    [InlineData("""{"vin":"GZ0FE64C5PH000977"}""", "name")]
    [InlineData("""{"name":"Fell","year":"2023"}""", "year")]
    [InlineData("""{"name":"Fell","distance":"12 apples"}""", "distance")]
    [InlineData("\"Fell\"", "known")]
    public void A_form_that_is_not_understood_opens_nothing_and_is_kept(string known, string names)
    {
        var whole = Body(Stranger).GetRawText();
        var text = whole.Replace(Body(Stranger).GetProperty("known").GetRawText(), known);
        using var json = JsonDocument.Parse(text);
        var state = new AtWork().Writes(EntryKind.Arrival, json.RootElement).State;
        Assert.Null(state.Arrival);
        Assert.StartsWith(names, Assert.Single(state.NotUnderstood).Why);
    }

    [Fact]
    public void The_distance_on_record_judges_the_one_that_is_read()
    {
        var work = Arrived(Stranger).Reads("distance", "8000 km");
        Assert.Equal(VerdictWord.Outside, work["distance"].Current!.Opinion.Verdict);
    }

    [Theory]
    [InlineData("GZ0FE64C5PH000977", null, "gz0fe64c5ph000977", VerdictWord.Inside)]
    [InlineData("GZ0FE64C5PH000977", null, "GZ0FE64C8RH000412", VerdictWord.Outside)]
    [InlineData("", "FR-1932-77", "fr193277", VerdictWord.Inside)]
    [InlineData("", "FR-1932-77", "FR 1932 78", VerdictWord.Outside)]
    [InlineData("GZ0FE64C5PH000977", "FR-1932-77", "FR-1932-77", VerdictWord.Outside)]
    [InlineData("", null, "GZ0FE64C8RH000412", VerdictWord.Inside)]
    [InlineData("", null, "GZ0", VerdictWord.Outside)]
    public void The_number_on_the_frame_is_held_against_what_is_known(
        string vin,
        string? frame,
        string read,
        VerdictWord verdict
    )
    {
        var work = Arrived(Stranger with { Vin = vin, Frame = frame }).Reads("identity", read);
        Assert.Equal(verdict, work["identity"].Current!.Opinion.Verdict);
    }

    private static AtWork Arrived(Machine machine) => new AtWork().Writes(EntryKind.Arrival, Body(machine));

    private static JsonElement Body(Machine machine) =>
        EntryBody.Arrival(
            machine.Id,
            "fell-640",
            AtWork.Bench.Newest("fell-640")!.Revision,
            "handover",
            AtWork.Bench.Book.Purposes["handover"],
            known: machine
        );
}
