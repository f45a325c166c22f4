using System.Globalization;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>A pitch as the reading of a point, with its uncertainty and how it came about.</summary>
/// <param name="Value">The reading.</param>
/// <param name="Device">With what, and one standard deviation.</param>
/// <param name="Working">The formula with the numbers put in.</param>
public sealed record PitchReading(Written Value, DeviceReading Device, IReadOnlyList<Sentence> Working)
{
    /// <summary>How far the clock of a device's sound may be off, half-width: a hundredth of a percent; common practice, no source.</summary>
    private const double Clock = 1e-4;

    /// <summary>As people say it: <c>88.52 ± 0.10 Hz</c>.</summary>
    public Sentence Shown => Numerals.WithUncertainty(Value.Value, 2 * Device.Uncertainty.Value, Value.Unit);

    /// <summary>The digits that go into the box: one more than the uncertainty leaves worth reading.</summary>
    public string Digits
    {
        get
        {
            var u = Device.Uncertainty.Value;
            var decimals = u > 0 ? Math.Min(4, Numerals.DecimalsFor(2 * u) + 1) : 4;
            return Math.Round(Value.Value, decimals).ToString("0.####", CultureInfo.InvariantCulture);
        }
    }

    /// <summary>Turns a pitch into the reading; null while something is missing for it, or where pitches are only compared.</summary>
    /// <param name="heard">The pitch.</param>
    /// <param name="use">What becomes of it.</param>
    /// <param name="given">What that needs.</param>
    /// <param name="unit">The unit of the reading.</param>
    public static PitchReading? Of(Heard heard, PitchUse use, PitchGiven given, Unit unit)
    {
        if (use == PitchUse.Compare || !given.IsEnoughFor(use))
            return null;
        var (f, u) = (heard.Frequency.Hertz, Uncertain(heard));
        Sentence pitch = $"f = {N(f)} Hz, u = {N(u)} Hz, clarity {Numerals.Plain(heard.Clarity, 3)} (tone)";
        Sentence clock =
            $"u² = {N(heard.Uncertainty.Hertz)}² + ({N(Clock)} · {N(f)})²/3: of the pitch and of the device's clock";
        var (value, share, how) = Made(heard, use, given);
        return new(
            new(unit.FromBase(value), unit),
            new(DeviceSense.Microphone, new(unit.FromBase(value) * share * u / f, unit)),
            how is null ? [pitch, clock] : [pitch, clock, .. how]
        );
    }

    /// <summary>One standard deviation of a pitch with the clock that it was heard by, hertz.</summary>
    public static double Uncertain(Heard heard) =>
        Math.Sqrt(
            heard.Uncertainty.Hertz * heard.Uncertainty.Hertz
                + Clock * Clock * heard.Frequency.Hertz * heard.Frequency.Hertz / 3
        );

    /// <summary>The reading in its base unit, and how many times its share is uncertain that the pitch's share is.</summary>
    private static (double Value, double Share, Sentence[]? How) Made(Heard heard, PitchUse use, PitchGiven given) =>
        use switch
        {
            PitchUse.EngineSpeed => (
                IdleSpeed.Of(heard.Frequency, given.Cylinders!.Value, given.Even!.Value, given.Strokes!.Value).Hertz,
                1,
                Speed(heard, given)
            ),
            PitchUse.Tension => (
                BeltTension.Of(heard.Frequency, given.FreeSpan!.Value, given.Mass!.Value).Newtons,
                2,
                Tension(heard, given)
            ),
            _ => (heard.Frequency.Hertz, 1, null),
        };

    private static Sentence[] Speed(Heard heard, PitchGiven given)
    {
        var firing = given.Even!.Value ? given.Cylinders!.Value : 1;
        var speed = heard.Frequency.Hertz * 60 * given.TurnsInPeriod;
        return
        [
            $"speed = 60 · f · (strokes/2) / {(given.Even.Value ? (Sentence)$"cylinders" : (Sentence)$"1, the whole cycle")} = 60 · {N(heard.Frequency.Hertz)} · ({given.Strokes!.Value}/2) / {firing} = {Numerals.Plain(speed, 1)} 1/min",
            $"idle-speed: a four-stroke fires each cylinder once every two turns, a two-stroke every turn",
        ];
    }

    private static Sentence[] Tension(Heard heard, PitchGiven given)
    {
        var (length, mass) = (given.FreeSpan!.Value.Millimetres / 1000, given.Mass!.Value.KilogramsPerMetre);
        var tension = BeltTension.Of(heard.Frequency, given.FreeSpan.Value, given.Mass.Value).Newtons;
        return
        [
            $"T = 4·m·L²·f² = 4 · {N(mass)} kg/m · ({N(length)} m)² · ({N(heard.Frequency.Hertz)} Hz)² = {Numerals.Plain(tension, 1)} N",
            $"belt-tension: the span swings as half a wave; span and mass are taken as exact, and 1 % of the span makes 2 % of the tension",
        ];
    }

    private static Sentence N(double value) =>
        Numerals.Plain(value, value == 0 ? 0 : Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6));
}
