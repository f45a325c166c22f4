using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Tests.Fluids;

public class BrakeFluidTests
{
    private static FluidState? State(string grade, double boilsAt) => BrakeFluid.Of(grade, new(boilsAt)).Certain.State;

    public static TheoryData<string, double, double> Grades =>
        [.. PublishedRows.Of("brake-fluids.csv").Select(r => (r.Text("grade"), r.Number("dry"), r.Number("wet")))];

    // 49 CFR 571.116, S5.1.1 and S5.1.2: "not less than", so the minimum itself is met
    [Theory]
    [MemberData(nameof(Grades))]
    public void Each_grade_turns_at_its_two_minima(string grade, double dry, double wet)
    {
        Assert.Equal(FluidState.Fresh, State(grade, dry));
        Assert.Equal(FluidState.Ageing, State(grade, dry - 0.01));
        Assert.Equal(FluidState.Ageing, State(grade, wet));
        Assert.Equal(FluidState.Replace, State(grade, wet - 0.01));
        var judged = BrakeFluid.Of(grade, new(100)).Certain;
        Assert.Equal((dry, wet), (judged.DryMinimum.DegreesCelsius, judged.WetMinimum.DegreesCelsius));
    }

    // A minimum written in °F comes back a few roundings off and is still the minimum
    [Theory]
    [MemberData(nameof(Grades))]
    public void A_rounding_does_not_condemn_a_fluid(string grade, double dry, double wet)
    {
        Assert.Equal(FluidState.Fresh, State(grade, dry - 1e-10));
        Assert.Equal(FluidState.Ageing, State(grade, wet - 1e-10));
    }

    [Fact]
    public void The_grades_are_those_of_the_cap() =>
        Assert.Equal(["DOT 3", "DOT 4", "DOT 5", "DOT 5.1"], BrakeFluid.Grades);

    [Theory]
    [InlineData(400, null)]
    [InlineData(400.1, "notABoilingPoint")]
    public void A_reading_in_another_unit_is_refused_beside_the_minima(double boilsAt, string? key)
    {
        var answer = BrakeFluid.Of("DOT 4", new(boilsAt));
        Assert.Equal(key, answer.Refusal?.Key);
        Assert.Equal(230, answer.Value!.DryMinimum.DegreesCelsius);
        Assert.Equal(key is null, answer.Value.State is not null);
    }

    [Fact]
    public void A_grade_that_does_not_exist_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => BrakeFluid.Of("DOT 2", new(200)));
}
