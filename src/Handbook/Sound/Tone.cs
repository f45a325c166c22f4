using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Pitch of a plucked belt, a spoke or an idling engine in a noisy recording.</summary>
/// <remarks>
/// <para><b>Formula.</b> n(τ) = 2·Σ x_j·x_(j+τ) / Σ (x_j² + x_(j+τ)²) in overlapping stretches of the recording; the period is the
/// first key maximum that reaches 0.9 of the highest in the range, clarity its height. It is followed over up to eight periods and
/// a straight line through the origin fitted: f = Σk² / Σ(k·τ_k). Stretches that agree within 3 % and hold 60 % of the energy with a
/// tone count together. Lines within 0.6 Hz of a multiple of the mains frequency are taken out first where they carry more than
/// 3 % of the energy.</para>
/// <para><b>Units.</b> Hz; clarity a pure number, S/(S + N) for a steady tone of power S under noise of power N within the band.</para>
/// <para><b>Source.</b> McLeod and Wyvill, "A Smarter Way to Find Pitch", Proc. International Computer Music Conference 2005. Stretches,
/// following, the treatment of hum and the thresholds: own, set by the study in docs/handbook/tone.md.</para>
/// <para><b>Valid when</b> one thing sounds at a time and the recording holds six periods of the lowest pitch looked for, 0.1 s to 30 s.
/// Below 1 s hum is not taken out. A tone within 1 Hz of a multiple of the mains frequency, which nothing tells from hum, is refused.</para>
/// </remarks>
public static class Tone
{
    /// <summary>Shortest recording that is looked at, seconds.</summary>
    public const double LeastSeconds = 0.1;

    /// <summary>Lowest pitch looked for when nobody says what to expect, hertz: a single-cylinder four-stroke at 960 1/min.</summary>
    public const double Lowest = 8;

    /// <summary>Highest pitch looked for when nobody says what to expect, hertz: above any spoke.</summary>
    public const double Highest = 2_000;

    /// <summary>Highest pitch that may be expected, hertz; work stays bounded.</summary>
    public const double HighestExpected = 4_000;

    /// <summary>One standard deviation, as a share of the pitch, above which there is no answer.</summary>
    private const double MostDeviation = 0.003;

    /// <summary>Share of the energy on the lines of the hum above which they are taken out.</summary>
    private const double LoudHum = 0.03;

    /// <summary>Share above which the rest is no more than traces of the hum.</summary>
    private const double AllHum = 0.85;

    // Hertz from a multiple of the mains frequency within which a tone may be hum.
    private const double NearHum = 1;

    private const double SamePitch = 0.01;
    private const double ExactlySamePitch = 0.003;

    private const double FewestPeriods = PitchSearch.PeriodsInStretch * PitchSearch.LeastStretches;

    private static readonly double[] MainsOfTheWorld = [50, 60];

    /// <summary>Looks for the one tone of a recording.</summary>
    /// <param name="recording">Not longer than <see cref="Recording.MostSeconds"/>, not faster than <see cref="Recording.MostRate"/>.</param>
    /// <param name="expected">Pitches that come into question, the ends in order, the higher at most a quarter of the rate; or null:
    /// 8 Hz (in a short recording six periods) to 2 kHz or an eighth of the rate.</param>
    /// <param name="mains">Frequency of a hum that is known to be in the recording, or null: 50 Hz and 60 Hz are suspected.</param>
    /// <returns>Refused as <c>noClearTone</c>.</returns>
    /// <exception cref="ArgumentException">The recording or the range is outside these bounds.</exception>
    public static Answer<Heard> In(
        Recording recording,
        (Frequency Min, Frequency Max)? expected = null,
        Frequency? mains = null
    )
    {
        if (
            recording.Seconds > Recording.MostSeconds
            || recording.Rate.Hertz is < Recording.LeastRate or > Recording.MostRate
        )
            throw new ArgumentException("Too long, or sampled too fast or too slowly.", nameof(recording));
        if (expected is { } range && !(range.Min.Hertz > 0 && range.Min < range.Max && range.Max <= recording.Rate / 4))
            throw new ArgumentException("The ends in order, at most a quarter of the rate.", nameof(expected));
        var low = expected?.Min.Hertz ?? Math.Max(Lowest, FewestPeriods / recording.Seconds);
        var high = expected?.Max.Hertz ?? Math.Min(Highest, recording.Rate.Hertz / 8);
        if (recording.Seconds < Math.Max(LeastSeconds, FewestPeriods / low * (1 - 1e-9)))
            return Refuse(
                $"The recording is too short for so low a tone: six periods are needed, better twenty. Record longer, or expect a higher tone."
            );
        return Among(
            Pitches.Of(recording, low, high, mains is { } told ? [told.Hertz] : MainsOfTheWorld),
            mains is not null
        );
    }

    private static Answer<Heard> Among(Pitches pitches, bool humKnown)
    {
        var loudest = pitches.Quiet.MaxBy(q => q.HumShare)!;
        var fromQuiet = loudest.HumShare > LoudHum;
        var pitch = fromQuiet ? loudest.Pitch : pitches.AsIs;
        if (loudest.HumShare > AllHum)
            return Hum();
        if (pitch is null || pitch.Deviation > MostDeviation * pitch.Hertz)
            return Refuse(
                $"No clear tone: nothing repeats evenly through the recording. Come closer, keep other noise away, pluck again, "
                    + $"or say which range of frequencies to expect."
            );
        if (pitches.Quiet.Any(q => q.IsHum(pitch, NearHum) && !q.Confirms(pitch, ExactlySamePitch)))
            return Hum();
        // A tone and a hum together repeat only after some periods of both: such a lower pitch is neither.
        if (
            !humKnown
            && (
                pitches.All.Any(other => Disagrees(other, pitch, pitches))
                || (fromQuiet && loudest.IsCoincidence(pitch, SamePitch))
            )
        )
            return Refuse(
                $"Two tones are in the recording and nothing tells which is meant: say which range to expect, "
                    + $"or give the mains frequency when the other one is hum."
            );
        return new Heard(
            new(pitch.Hertz),
            pitch.Clarity,
            new(pitch.Deviation),
            fromQuiet ? new Frequency(loudest.Hum) : null
        );
    }

    private static bool Disagrees(Pitch other, Pitch pitch, Pitches pitches) =>
        Math.Abs(other.Hertz / pitch.Hertz - 1) > SamePitch
        && (other.Hertz > pitch.Hertz / 1.2 || pitches.Quiet.Any(q => q.IsHum(other, NearHum)));

    private static Answer<Heard> Hum() =>
        Refuse($"The tone cannot be told from mains hum: record away from lamps, chargers and mains leads.");

    private static Answer<Heard> Refuse(Sentence because) => Answer<Heard>.Refuse("noClearTone", because);
}

/// <summary>A tone that was heard.</summary>
/// <param name="Frequency">Its pitch.</param>
/// <param name="Clarity">How alike the sound is to itself one period later, up to 1.</param>
/// <param name="Uncertainty">One standard deviation of the pitch.</param>
/// <param name="Hum">The mains frequency whose multiples were taken out first, or null.</param>
public sealed record Heard(Frequency Frequency, double Clarity, Frequency Uncertainty, Frequency? Hum);
