using FsCheck.Xunit;
using MathNet.Numerics;
using Witnessmark.Handbook.Electrics;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Handbook.Tests.Electrics;

public class VoltageDropTests
{
    // Ohm's law: 0.6 V at 12 A is 50 mΩ
    [Fact]
    public void Resistance_is_drop_over_current()
    {
        var lost = VoltageDrop.Between(new(12.4), new(11.8), new(0.03), new(12), null).Certain;
        Assert.Equal(0.05, lost.Resistance!.Value.Ohms, 1e-12);
        Assert.Equal(Math.Sqrt(2) * 0.03 / 12, lost.ResistanceUncertainty!.Value.Ohms, 1e-15);
        Assert.Null(lost.Judged);
    }

    [Fact]
    public void Without_a_current_there_is_no_resistance()
    {
        var lost = VoltageDrop.Between(new(12.4), new(11.8), new(0.03), null, new(0.5)).Certain;
        Assert.Null(lost.Resistance);
        Assert.Null(lost.ResistanceUncertainty);
        Assert.Equal(Call.Outside, lost.Judged!.Value.Call);
    }

    // GUM 5.1.2: u of a difference is the root of the sum of the squares; JCGM 106:2012, 7.2: Φ((T − y)/u), here by the error function
    [Property]
    public void Conformance_is_that_of_the_drop_with_two_readings(uint a, uint b)
    {
        var (far, u) = (Chance.Between(11.5, 12.4, a), Chance.Between(0.01, 0.2, b));
        var judged = VoltageDrop.Between(new(12.4), new(far), new(u), null, new(0.4)).Certain.Judged!.Value;
        var z = (0.4 - (12.4 - far)) / Math.Sqrt(u * u + u * u);
        Assert.Equal((1 + SpecialFunctions.Erf(z / Math.Sqrt(2))) / 2, judged.Conformance, 1e-9);
        Assert.Equal(0.4 - (12.4 - far), judged.Margin, 1e-9);
    }

    [Theory]
    [InlineData(12.2, 0.2, Call.Inside)]
    [InlineData(12.2, 0.199, Call.Outside)]
    [InlineData(12.1, 0.3, Call.Inside)]
    [InlineData(12.4, 0, Call.Inside)]
    public void Exact_readings_on_the_limit_are_inside(double far, double limit, Call call) =>
        Assert.Equal(
            call,
            VoltageDrop.Between(new(12.4), new(far), default, null, new(limit)).Certain.Judged!.Value.Call
        );

    [Fact]
    public void A_higher_confidence_asks_for_more()
    {
        Call At(double confidence) =>
            VoltageDrop.Between(new(12.4), new(12.2), new(0.1), null, new(0.5), confidence).Certain.Judged!.Value.Call;
        Assert.Equal(Call.Inside, At(0.95));
        Assert.Equal(Call.Unproven, At(0.99));
    }

    // Two deviations of the drop: 2 · √2 · 0.05 V = 0.141421 V
    [Theory]
    [InlineData(12.1414, null)]
    [InlineData(12.1415, "wrongWayRound")]
    public void The_wrong_way_round_is_refused_where_the_meter_does_not_explain_it(double far, string? key)
    {
        var answer = VoltageDrop.Between(new(12), new(far), new(0.05), new(5), new(0.5));
        Assert.Equal(key, answer.Refusal?.Key);
        Assert.Equal(12 - far, answer.Value!.Drop.Volts, 1e-12);
        Assert.Equal(key is null, answer.Value.Judged is not null);
        Assert.Equal(key is null, answer.Value.Resistance is not null);
    }

    [Fact]
    public void Exact_readings_the_wrong_way_round_are_always_refused() =>
        Assert.False(VoltageDrop.Between(new(12), new(12.001), default, null, null).Holds);

    [Property]
    public void A_lower_voltage_at_the_load_never_conforms_better(uint a)
    {
        var far = Chance.Between(11, 12.3, a);
        double Conformance(double v) =>
            VoltageDrop.Between(new(12.4), new(v), new(0.05), null, new(0.5)).Certain.Judged!.Value.Conformance;
        Assert.True(Conformance(far - 0.01) <= Conformance(far));
    }
}
