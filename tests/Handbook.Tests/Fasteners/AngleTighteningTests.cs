using Witnessmark.Handbook.Fasteners;

namespace Witnessmark.Handbook.Tests.Fasteners;

public class AngleTighteningTests
{
    private static StagedPreload Told(
        double torque,
        double k,
        double d,
        double p,
        double bolt,
        double joint,
        double deg
    ) => AngleTightening.From(new(torque), k, new(d), new(p), new(bolt), new(joint), new(deg * Math.PI / 180));

    // Oracle: the nut is turned in steps of 0.01°; each advances it by P/36000, which bolt and joint share as springs do
    [Theory]
    [InlineData(20, 0.15, 10, 1.25, 110_000, 500_000, 90)]
    [InlineData(20, 0.14, 9, 1.25, 70_000, 350_000, 120)]
    [InlineData(15, 0.17, 8, 1.25, 60_000, 300_000, 60)]
    [InlineData(15, 0.17, 8, 1.25, 60_000, 300_000, 0)]
    public void Preload_is_that_of_the_nut_turned_step_by_step(
        double torque,
        double k,
        double d,
        double p,
        double bolt,
        double joint,
        double degrees
    )
    {
        var force = torque / (k * d / 1000);
        var (stretched, squeezed) = (force / bolt, force / joint);
        for (var step = 0; step < degrees * 100; step++)
        {
            var closed = stretched + squeezed + p / 36_000;
            // Both carry the same force: stretched·bolt = squeezed·joint
            stretched = closed * joint / (bolt + joint);
            squeezed = closed - stretched;
        }
        Assert.Equal(stretched * bolt, Told(torque, k, d, p, bolt, joint, degrees).Total.Newtons, 0.01);
    }

    // Shigley, Mechanical Engineering Design, 10th edition, example 8-3 (from memory): 3/4-16 UNF, K 0.2, 25 kip takes 3750 lbf·in
    [Fact]
    public void Snug_preload_of_a_textbook_example() =>
        Assert.Equal(25_000 * 4.4482216, Told(3750 * 0.1129848, 0.2, 0.75 * 25.4, 25.4 / 16, 1, 1, 0).Snug.Newtons, 1);

    [Fact]
    public void Scatter_of_the_nut_factor_touches_only_the_snug_part()
    {
        var (low, high) = (
            Told(20, 0.12, 10, 1.25, 110_000, 500_000, 90),
            Told(20, 0.18, 10, 1.25, 110_000, 500_000, 90)
        );
        Assert.Equal(low.Added, high.Added);
        Assert.Equal(1.5, low.Snug / high.Snug, 1e-9);
    }
}
