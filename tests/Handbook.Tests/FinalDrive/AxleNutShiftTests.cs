using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class AxleNutShiftTests
{
    private static readonly ShiftBelief Prior = new(new(100), new(100));

    private static Answer<NutShift> Learn(ShiftBelief prior, params (double Before, double After)[] pairs) =>
        AxleNutShift.From(
            [.. pairs.Select(p => new NutPair(new(p.Before), new(p.After)))],
            new(24.4),
            prior,
            new(40),
            new(0.7)
        );

    // Oracle: prior times likelihood on a grid of 0.05 mm², summed
    [Fact]
    public void The_shift_agrees_with_a_posterior_on_a_grid()
    {
        (double Before, double After)[] pairs = [(26, 23), (28, 25.5), (31, 28.5)];
        double total = 0,
            mean = 0,
            square = 0;
        for (var q = -900.0; q <= 1100; q += 0.05)
        {
            var log = -(q - 100) * (q - 100) / 2e4;
            foreach (var (b, a) in pairs)
            {
                var variance = 4 * 0.49 * (b * b + a * a) + 4 * 0.49 * 0.49 + 1600;
                log -= (b * b - a * a - q) * (b * b - a * a - q) / (2 * variance);
            }
            var density = Math.Exp(log);
            (total, mean, square) = (total + density, mean + density * q, square + density * q * q);
        }
        mean /= total;
        var shift = Learn(Prior, pairs).Certain;
        Assert.Equal(mean, shift.Shift.SquareMillimetres, 1e-3);
        Assert.Equal(Math.Sqrt(square / total - mean * mean), shift.ShiftDeviation.SquareMillimetres, 1e-3);
    }

    [Fact]
    public void The_slack_to_set_ends_at_the_target()
    {
        var shift = Learn(Prior, (26, 23)).Certain;
        var set = shift.SetTo!.Value.Millimetres;
        Assert.Equal(24.4 * 24.4, set * set - shift.Shift.SquareMillimetres, 1e-9);
    }

    [Fact]
    public void A_nut_that_loosens_more_than_the_target_is_refused_and_the_shift_still_given()
    {
        var answer = Learn(new(new(-700), new(10)));
        Assert.Equal("outOfReach", answer.Refusal?.Key);
        Assert.Equal(-700, answer.Value!.Shift.SquareMillimetres, 1e-9);
        Assert.Null(answer.Value.SetTo);
    }

    // 24² mm² are loosened away: nothing is left to set
    [Fact]
    public void A_nut_that_loosens_by_just_the_target_is_refused()
    {
        var answer = AxleNutShift.From([], new(24), new(new(-576), new(1)), new(40), new(0.7));
        Assert.Equal("outOfReach", answer.Refusal?.Key);
    }

    [Fact]
    public void Pairs_without_any_scatter_are_a_bug_of_the_caller_and_either_scatter_is_enough()
    {
        static Answer<NutShift> With(NutPair[] pairs, double scatter, double u) =>
            AxleNutShift.From(pairs, new(24.4), Prior, new(scatter), new(u));
        NutPair[] one = [new(new(26), new(23))];
        Assert.Throws<ArgumentException>("jobScatter", () => With(one, 0, 0));
        Assert.True(With(one, 40, 0).Holds);
        Assert.True(With(one, 0, 0.7).Holds);
        Assert.True(With([], 0, 0).Holds);
    }
}
