using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>Between which pitches a sound is looked for, and how long it is listened to for one answer.</summary>
/// <remarks>
/// <para><b>Formula.</b> What is plausible at the point, put back from the reading to the pitch; the window holds seven periods of the lowest
/// pitch, and two seconds at least.</para>
/// <para><b>Source.</b> <c>tone</c> asks for six periods; the study of its page was made with two seconds. Spokes ring between 80 Hz and
/// 1500 Hz: common practice, no source.</para>
/// </remarks>
/// <param name="Min">The lowest.</param>
/// <param name="Max">The highest.</param>
public readonly record struct PitchRange(Frequency Min, Frequency Max)
{
    private const double LeastWindow = 2;
    private const double PeriodsInWindow = 7;
    private static readonly PitchRange OfSpokes = new(new(80), new(1500));

    /// <summary>How long one look lasts, seconds.</summary>
    public double Window => Math.Max(LeastWindow, PeriodsInWindow / Min.Hertz);

    /// <summary>The range at a point.</summary>
    public static PitchRange For(Point point, PitchUse use, PitchGiven given)
    {
        var all = new PitchRange(new(Tone.Lowest), new(Tone.Highest));
        if (use == PitchUse.Compare)
            return OfSpokes;
        var form = point.Reading;
        if (
            form is not { Unit: { } unit, PlausibleMin: > 0 and var min, PlausibleMax: { } max }
            || !given.IsEnoughFor(use)
        )
            return all;
        return new(Pitch(unit.ToBase(min), use, given), Pitch(unit.ToBase(max), use, given));
    }

    private static Frequency Pitch(double reading, PitchUse use, PitchGiven given) =>
        use switch
        {
            PitchUse.EngineSpeed => new(reading / given.TurnsInPeriod),
            // T grows with the square of the pitch
            PitchUse.Tension => new(
                Math.Sqrt(reading / BeltTension.Of(new(1), given.FreeSpan!.Value, given.Mass!.Value).Newtons)
            ),
            _ => new(reading),
        };
}
