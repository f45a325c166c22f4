using Witnessmark.Bench.Day;

namespace Witnessmark.Bench.Tests.Day;

/// <summary>Each rule broken alone, by one minute where it has one.</summary>
public class DayRulesTests
{
    private static readonly Span[] Open = [new(480, 720), new(780, 1020)];

    private static readonly DayJob One = new("1", "A", [new($"strip", 60, 20), new($"build", 30, 0)]);
    private static readonly DayJob Two = new("2", "B", [new($"work", 60, 0)], Parts: 500, Skills: ["brakes"]);

    private static readonly DayQuestion Question = new(
        new(2026, 11, 26),
        480,
        Open,
        [new("Ines", null, Open), new("Bram", [], Open)],
        ["L1", "L2"],
        [One, Two]
    );

    private static readonly PlacedJob OneAt = new("1", "Bram", "L1", [480, 560]);
    private static readonly PlacedJob TwoAt = new("2", "Ines", "L2", [500]);

    private static string Broken(PlacedJob one, PlacedJob two, DayQuestion? question = null) =>
        Assert.Single(DayRules.Broken(question ?? Question, new([one, two]))).Words;

    [Fact]
    public void A_plan_that_can_be_worked_breaks_none() => Assert.Empty(DayRules.Broken(Question, new([OneAt, TwoAt])));

    [Fact]
    public void Skill() =>
        Assert.Equal("Bram lacks the skill brakes.", Broken(OneAt, TwoAt with { Technician = "Bram", Starts = [600] }));

    [Fact]
    public void Hours() =>
        Assert.Equal(
            "Ines is not there all the time from 11:01 to 12:01.",
            Broken(OneAt, TwoAt with { Starts = [661] })
        );

    [Fact]
    public void Order_and_wait() =>
        Assert.Equal("\"build\" begins before \"strip\" is over.", Broken(OneAt with { Starts = [480, 559] }, TwoAt));

    [Fact]
    public void Parts() =>
        Assert.Equal("It begins before its parts arrive at 08:20.", Broken(OneAt, TwoAt with { Starts = [499] }));

    [Fact]
    public void Past() =>
        Assert.Equal(
            "It begins at 08:00, which has passed.",
            Broken(OneAt, TwoAt with { Starts = [600] }, Question with { Now = 481 })
        );

    [Fact]
    public void Two_at_once_for_one_technician() =>
        Assert.Equal(
            "Ines is at A (1) from 08:00 to 09:00.",
            Broken(OneAt with { Technician = "Ines" }, TwoAt with { Starts = [539] }, With(500))
        );

    [Fact]
    public void While_it_drains_the_technician_is_free()
    {
        var brief = Two with { Steps = [new($"look", 20, 0)] };
        Assert.Empty(
            DayRules.Broken(
                Question with
                {
                    Jobs = [One, brief],
                },
                new([OneAt with { Technician = "Ines" }, TwoAt with { Starts = [540] }])
            )
        );
    }

    [Fact]
    public void Two_at_once_on_one_lift() =>
        Assert.Equal("A (1) stands on L1 until 09:50.", Broken(OneAt, TwoAt with { Lift = "L1", Starts = [589] }));

    [Fact]
    public void What_is_begun_is_not_moved()
    {
        var begun = Question with { Jobs = [One with { Held = new("Bram", 480, "L1", true) }, Two] };
        Assert.Empty(DayRules.Broken(begun, new([OneAt, TwoAt])));
        Assert.Equal(
            "It was begun at 08:00 and is not moved.",
            Broken(OneAt with { Starts = [481, 561] }, TwoAt, begun)
        );
        Assert.Equal(
            "It has been begun by Bram on L1 and is not moved.",
            Broken(OneAt with { Technician = "Ines" }, TwoAt with { Starts = [600] }, begun)
        );
    }

    [Fact]
    public void Names_that_the_shop_does_not_have() =>
        Assert.Equal("\"L9\" is no lift of this shop.", Broken(OneAt, TwoAt with { Lift = "L9" }));

    [Fact]
    public void Moved_by_hand_it_keeps_its_lift_or_takes_a_free_one()
    {
        var plan = new DayPlan([OneAt, TwoAt]);
        Assert.Equivalent(TwoAt with { Starts = [600] }, ByHand.Move(Question, plan, Two, "Ines", 600));
        Assert.Equal(
            "L2",
            ByHand.Move(Question, new([OneAt, TwoAt with { Lift = "L1", Starts = [900] }]), Two, "Ines", 500).Lift
        );
        Assert.Equal([700, 780], ByHand.Move(Question, plan, One, "Bram", 700).Starts);
    }

    private static DayQuestion With(int parts) => Question with { Jobs = [One, Two with { Parts = parts }] };
}
