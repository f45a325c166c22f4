using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wheels;

/// <summary>The weight that balances a wheel, learnt from one trial weight, and the weights of the box that come nearest to it.</summary>
/// <remarks>
/// <para><b>Formula.</b> Readings are vectors V₀ (without) and V₁ (with the trial weight m at angle θ). Its effect E = V₁ − V₀; correction
/// mass = m·|V₀|/|E|, correction angle = θ + ∠(−V₀) − ∠E. From the box none, one or two weights a ≥ b at any angles leave the least of
/// |C − a|, C − a − b, a − b − C, or nothing where a − b ≤ C ≤ a + b: then a stands acos((C² + a² − b²)/2Ca) before the correction
/// angle and b acos((C² + b² − a²)/2Cb) after it.</para>
/// <para><b>Units.</b> Amounts are pure numbers of one scale (mm/s, divisions, g·mm); masses in g, all at the radius of the trial weight; angles
/// in deg, turning the same way as the machine counts them.</para>
/// <para><b>Source.</b> Influence coefficients in one plane, the vector method of field balancing; ISO 21940-11:2016 for what may
/// remain: G = e·Ω, so that U in g·mm is 9549·G·(mass in kg)/(speed in 1/min). Choice from the box: own derivation, triangle of
/// three sides; checked by trying all angles.</para>
/// <para><b>Valid when</b> both readings were taken alike, at one speed, and the trial weight changed them clearly: by about 30 % or
/// 30° (rule of thumb of a public tutorial on the vector method). One plane only: a wide wheel may need two.</para>
/// </remarks>
public static class WheelBalance
{
    /// <summary>A change below this part of the larger reading is lost in the digits of the readings; own choice.</summary>
    public const double LeastEffect = 0.001;

    // Rule of thumb, see Source: below both, more is guessed than measured
    private const double ClearChange = 0.3;
    private const double ClearTurn = Math.PI / 6;

    /// <summary>The correction; the box is asked when there is one.</summary>
    /// <param name="initial">Without the trial weight.</param>
    /// <param name="trialMass">More than zero.</param>
    /// <param name="trialAngle">Where it was put.</param>
    /// <param name="withTrial">With it.</param>
    /// <param name="box">The weights at hand, each once for each piece; null when not asked for.</param>
    /// <returns>Refused as <c>trialTooSmall</c>.</returns>
    public static Answer<Balance> From(
        Vibration initial,
        Mass trialMass,
        Angle trialAngle,
        Vibration withTrial,
        IReadOnlyList<Mass>? box = null
    )
    {
        var (x, y) = (withTrial.X - initial.X, withTrial.Y - initial.Y);
        var effect = double.Hypot(x, y);
        if (effect <= LeastEffect * Math.Max(initial.Amount, withTrial.Amount))
            return Answer<Balance>.Refuse(
                "trialTooSmall",
                $"The trial weight changed the reading by nothing that can be told: no weight anybody could place follows from it. Take a heavier one and read again."
            );
        var mass = trialMass * (initial.Amount / effect);
        var angle =
            initial.Amount == 0
                ? default
                : new Angle(trialAngle.Radians + Math.Atan2(-initial.Y, -initial.X) - Math.Atan2(y, x)).OnCircle();
        var correction = new PlacedWeight(mass, angle);
        return new Balance(
            correction,
            box is null ? null : WeightChoice.Nearest(correction, box),
            IsFaint(initial, withTrial)
        );
    }

    private static bool IsFaint(Vibration initial, Vibration withTrial) =>
        Math.Abs(withTrial.Amount - initial.Amount) < ClearChange * initial.Amount
        && Math.Abs(Math.IEEERemainder(withTrial.Angle.Radians - initial.Angle.Radians, Math.Tau)) < ClearTurn;
}

/// <summary>One reading of an unbalance.</summary>
/// <param name="Amount">How much, on any scale that begins at zero.</param>
/// <param name="Angle">Where, counted from the mark on the wheel.</param>
public readonly record struct Vibration(double Amount, Angle Angle)
{
    internal double X => Amount * Math.Cos(Angle.Radians);

    internal double Y => Amount * Math.Sin(Angle.Radians);
}

/// <summary>A weight and where it stands on the rim.</summary>
/// <param name="Mass">Its mass.</param>
/// <param name="Angle">From 0 to 360 deg.</param>
public readonly record struct PlacedWeight(Mass Mass, Angle Angle);

/// <summary>What balances a wheel.</summary>
/// <param name="Correction">The weight that would balance it exactly.</param>
/// <param name="Placing">What the box gives, or null when it was not asked for.</param>
/// <param name="Faint">Whether the trial weight changed the readings too little to trust them.</param>
public sealed record Balance(PlacedWeight Correction, Placing? Placing, bool Faint);
