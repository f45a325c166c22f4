using Witnessmark.Bench.Day;

namespace Witnessmark.Bench.Tests.Day;

/// <summary>Each reason where it alone holds, worked out by hand.</summary>
public class LateReasonTests
{
    private static readonly Span[] Open = [new(480, 720), new(780, 1020), new(1920, 2160)];

    private static DayQuestion Of(params DayJob[] jobs) =>
        new(
            new(2026, 11, 26),
            480,
            Open,
            [new("Ines", ["brakes", "tyres"], Open), new("Bram", ["brakes"], Open[..1])],
            ["L1", "L2"],
            jobs
        );

    private static DayJob Job(string id, int hands, int promised) => new(id, id, [new($"work", hands, 0)], promised);

    private static MissedPromise Missed(DayQuestion question, params PlacedJob[] placed) =>
        Assert.Single(LateReason.Of(question, new(placed)));

    [Fact]
    public void Passed() =>
        Assert.Equal(Late.Passed, Missed(Of(Job("1", 60, 480)), new PlacedJob("1", "Ines", "L1", [480])).Why);

    [Fact]
    public void Work_longer_than_the_time_left()
    {
        var missed = Missed(Of(Job("1", 60, 539)), new PlacedJob("1", "Ines", "L1", [480]));
        Assert.Equal((Late.Work, 1), (missed.Why, missed.Minutes));
        Assert.Equal("The work takes longer than the time left: 1 h from 08:00 on.", missed.Words);
    }

    [Fact]
    public void Parts_too_late() =>
        Assert.Equal(
            "Its parts arrive too late: at 09:00, and 1 h of work follow.",
            Missed(Of(Job("1", 60, 599) with { Parts = 540 }), new PlacedJob("1", "Ines", "L1", [540])).Words
        );

    [Fact]
    public void Nobody_with_the_skill_before()
    {
        var question = Of(Job("1", 60, 840) with { Skills = ["tyres"] });
        question = question with
        {
            Technicians = [question.Technicians[0] with { Hours = Open[2..] }, question.Technicians[1]],
        };
        var missed = Missed(question, new PlacedJob("1", "Ines", "L1", [1920]));
        Assert.Equal(Late.Skill, missed.Why);
        Assert.Equal("Nobody who can do it (tyres) is there long enough before 14:00.", missed.Words);
    }

    [Fact]
    public void All_lifts_taken()
    {
        var question = Of(Job("1", 60, 600), Job("2", 240, 1020)) with { Lifts = ["L1"] };
        var missed = Missed(question, new("1", "Bram", "L1", [1920]), new("2", "Ines", "L1", [480]));
        Assert.Equal((Late.Lifts, "All lifts are taken until Fri 27 Nov, 08:00."), (missed.Why, missed.Words));
    }

    [Fact]
    public void Those_who_can_are_at_other_machines()
    {
        var question = Of(Job("1", 60, 600) with { Skills = ["tyres"] }, Job("2", 240, 1020));
        var missed = Missed(question, new("1", "Ines", "L1", [780]), new("2", "Ines", "L2", [480]));
        Assert.Equal((Late.Hands, "Ines is at other machines too long before 10:00."), (missed.Why, missed.Words));
    }

    [Fact]
    public void Only_its_own_place_is_late()
    {
        var missed = Missed(Of(Job("1", 60, 600)), new PlacedJob("1", "Ines", "L1", [600]));
        Assert.Equal(Late.Placed, missed.Why);
    }

    [Fact]
    public void On_the_minute_is_not_late() =>
        Assert.Empty(LateReason.Of(Of(Job("1", 60, 540)), new([new("1", "Ines", "L1", [480])])));
}
