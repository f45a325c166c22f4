using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Tests.Fluids;

public class CoolantMixTests
{
    private static Answer<Exchange> Of(double system, double now, double wanted, double filledWith) =>
        CoolantMix.Of(new(system), new(now), new(wanted), new(filledWith));

    // Oracle: mix what the answer says and weigh the glycol that is then in the system
    [Property(MaxTest = 1000)]
    public void Mixing_as_told_gives_the_share_wanted(uint a, uint b, uint c)
    {
        var (system, now, filling) = (Chance.Between(0.5, 5, a), Chance.Between(0, 1, b), Chance.Between(0, 1, c));
        var wanted = now + (filling - now) * Chance.Between(0, 1, a ^ c);
        var exchanged = Of(system, now, wanted, filling).Certain.Volume.Litres;
        Assert.InRange(exchanged, 0, system * (1 + 1e-9));
        Assert.Equal(wanted, (now * (system - exchanged) + filling * exchanged) / system, 1e-9);
    }

    [Property(MaxTest = 500)]
    public void What_lies_beyond_the_filling_is_refused(uint a, uint b, uint c)
    {
        var (now, filling) = (Chance.Between(0, 1, a), Chance.Between(0, 1, b));
        var beyond =
            filling >= now ? filling + 0.001 + Chance.Between(0, 1, c) : filling - 0.001 - Chance.Between(0, 1, c);
        Assert.Equal("outOfReach", Of(2, now, beyond, filling).Refusal?.Key);
        Assert.Equal("outOfReach", Of(2, now, now - (filling >= now ? 0.01 : -0.01), filling).Refusal?.Key);
    }

    [Theory]
    [InlineData(0.3, 0.3, 1, 0)]
    [InlineData(0.3, 0.3, 0.3, 0)]
    [InlineData(0.3, 0.5, 0.5, 2)]
    [InlineData(0.3, 0, 0, 2)]
    public void Nothing_and_everything_are_answers(double now, double wanted, double filling, double exchanged) =>
        Assert.Equal(exchanged, Of(2, now, wanted, filling).Certain.Volume.Litres, 1e-12);

    // 30 % written once as a percentage and once as a share may differ in the last place
    [Fact]
    public void A_rounding_is_no_difference()
    {
        Assert.Equal(0, Of(2, 0.3, 0.3 + 1e-16, 0.3).Certain.Volume.Litres);
        Assert.Equal(2, Of(2, 0.3, 0.5 + 2e-16, 0.5).Certain.Volume.Litres, 1e-9);
    }
}
