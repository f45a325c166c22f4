using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Visits;

namespace Witnessmark.Bench.Tests.Visits;

public class MachineVisitsTests
{
    [Fact]
    public void A_visit_is_told_by_its_arrival_and_the_odometer()
    {
        var visit = Assert.Single(new ManyVisits().Comes("2025-03-31", 1200).Visits);
        Assert.Equal(("1", "handover", 1200.0), (visit.Job, visit.Head.Purpose, visit.Kilometres!.Value));
        Assert.Equal(new DateOnly(2025, 3, 31), visit.Day);
    }

    [Fact]
    public void The_last_reading_counts_and_a_struck_one_does_not()
    {
        var work = new ManyVisits().Comes("2025-03-31", 1200).Reads("distance", "1300 km");
        Assert.Equal(1300, work.Visits[0].Kilometres);
        var wrong = work.Last.Id;
        work.Writes(EntryKind.Strike, EntryBody.Strike("misread"), wrong);
        Assert.Equal(1200, work.Visits[0].Kilometres);
        work.Writes(EntryKind.Strike, EntryBody.Strike("it was right"), work.Last.Id);
        Assert.Equal(1300, work.Visits[0].Kilometres);
    }

    [Fact]
    public void Visits_under_another_id_belong_to_it_when_the_VIN_is_the_same()
    {
        var other = ManyVisits.Machine with { Id = "old", Vin = "GZ0FE64C8RH000413" };
        var work = new ManyVisits()
            .Comes("2025-02-01", 900, ManyVisits.Machine with { Id = "old" }, "old")
            .Comes("2025-01-01", 800, null, "fell-640-0977") // by the VIN of the shop's own file
            .Comes("2025-03-31", 1200)
            .Comes("2025-04-01", 700, other, "old");
        Assert.Equal(["2", "1", "3"], work.Visits.Select(v => v.Job));
        Assert.Equal(["3"], MachineVisits.Of("17", null, work.All, ManyVisits.Bench.Workshop).Select(v => v.Job));
        Assert.Equal(["3"], MachineVisits.Of("17", "", work.All, ManyVisits.Bench.Workshop).Select(v => v.Job));
    }

    [Fact]
    public void Every_machine_is_known_once_the_shops_own_first_then_those_of_jobs_as_they_were_last()
    {
        var work = new ManyVisits()
            .Comes("2025-02-01", 900, ManyVisits.Machine with { Id = "18", Vin = "", Name = "Scar" }, "18")
            .Comes("2025-03-01", 950, ManyVisits.Machine with { Id = "18", Vin = "", Name = "Scar, red" }, "18")
            .Comes("2025-03-31", 1200); // the VIN of a machine of the file
        Assert.Equal(
            ["fell-640-0412", "fell-640-0977", "18"],
            MachineVisits.Known(work.All, ManyVisits.Bench.Workshop).Select(m => m.Id)
        );
        Assert.Equal("Scar, red", MachineVisits.Last("18", work.All, ManyVisits.Bench.Workshop)!.Name);
        Assert.Equal("Fell 640", MachineVisits.Last("fell-640-0412", work.All, ManyVisits.Bench.Workshop)!.Name);
        Assert.Null(MachineVisits.Last("nobody", work.All, ManyVisits.Bench.Workshop));
    }

    [Fact]
    public void Distances_come_from_the_register_the_machine_and_its_visits_each_once()
    {
        var work = new ManyVisits().Comes("2024-06-01", 1200).Comes("2026-03-01", 900);
        DistanceOnDay[] record = [new(new(2023, 12, 1), 50), new(new(2024, 1, 1), 100)];
        Assert.Equal(
            [
                (50.0, DistanceMark.None),
                (100.0, DistanceMark.None),
                (1200.0, DistanceMark.None),
                (900.0, DistanceMark.WentBack),
            ],
            MachineVisits
                .Distances(record, ManyVisits.Machine, work.Visits)
                .Select(d => (d.Distance.Kilometres, d.Mark))
        );
    }

    [Fact]
    public void Points_with_numbers_are_listed_in_the_order_of_the_book()
    {
        var work = new ManyVisits()
            .Comes("2024-06-01", 1200)
            .ReadsAll("front-pads", "4.2 mm")
            .Reads("identity", "GZ0FE64C5PH000977")
            .Comes("2025-06-01", 2200)
            .ReadsAll("front-pads", "4.0 mm")
            .ReadsAll("front-pads", "4.0 mm")
            .Reads("chain-slack", "60 mm", "37 mm")
            .Does("oil-level", "looked at");
        var points = MachineVisits.Points(work.Visits, ManyVisits.Bench);
        Assert.Equal(
            ManyVisits.Bench.Book.Points.Keys.Where(k => k is "front-pads" or "chain-slack"),
            points.Select(p => p.Point.Id)
        );
        var pads = points.Single(p => p.Point.Id == "front-pads");
        Assert.Equal((2, "2"), (pads.Visits, pads.Last.Job));
    }

    [Theory]
    [InlineData("""{"sheet":"fell-640","revision":1,"purpose":"handover","points":[]}""")]
    [InlineData("""{"machine":"17","sheet":"fell-640","revision":1,"purpose":"handover","points":[],"known":7}""")]
    [InlineData("[]")]
    public void An_arrival_that_is_not_understood_is_no_visit(string body)
    {
        using var json = System.Text.Json.JsonDocument.Parse(body);
        var entry = new ManyVisits().Comes("2025-03-31", null).Last with { Body = json.RootElement };
        Assert.Null(Visit.Of("1", [entry]));
        Assert.Null(Visit.Of("1", []));
    }
}
