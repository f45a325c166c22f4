namespace Witnessmark.Handbook.Sound;

/// <summary>What is heard in a recording as it is, and without the hum of each mains frequency.</summary>
/// <param name="AsIs">With everything.</param>
/// <param name="Quiet">Without hum.</param>
internal sealed record Pitches(Pitch? AsIs, IReadOnlyList<Quiet> Quiet)
{
    /// <summary>In a shorter recording the lines of the hum are so wide that the tone would go with them, seconds.</summary>
    private const double HumSeconds = 1;

    /// <summary>All pitches found.</summary>
    public IEnumerable<Pitch> All => Quiet.Select(q => q.Pitch).Prepend(AsIs).OfType<Pitch>();

    /// <summary>Looks between <paramref name="low"/> and <paramref name="high"/>, hertz.</summary>
    public static Pitches Of(Recording recording, double low, double high, double[] hums)
    {
        var rate = recording.Rate.Hertz;
        // Overtones sharpen a low pitch; for a high one they only let noise in.
        var keep = Math.Min(Math.Max(1.5 * high, 500), 0.4 * rate);
        var sound = recording.Thinned(Math.Max(1, (int)(rate / Math.Max(6 * high, 2.5 * keep))));
        var band = new Band(sound, 0.8 * low, keep);
        var search = new PitchSearch(sound.Rate.Hertz, low, high);
        var energy = band.Energy;
        return new(search.In(band.Samples()), [.. hums.Select(Without)]);

        Quiet Without(double hum)
        {
            if (recording.Seconds < HumSeconds)
                return new(hum, 0, null);
            var quiet = band.Without(hum);
            return new(hum, energy > 0 ? 1 - quiet.Energy / energy : 0, search.In(quiet.Samples()));
        }
    }
}

/// <summary>What is heard without the hum of one mains frequency.</summary>
/// <param name="Hum">That frequency, hertz.</param>
/// <param name="HumShare">Share of the energy that went with it.</param>
/// <param name="Pitch">What is heard then.</param>
internal sealed record Quiet(double Hum, double HumShare, Pitch? Pitch)
{
    /// <summary>Where no more than a tenth of the sound is left, its traces are no proof of a tone.</summary>
    private const double AllHum = 0.9;

    /// <summary>Whether a pitch lies within so many hertz of a multiple of the hum.</summary>
    public bool IsHum(Pitch pitch, double within) =>
        Math.Abs(pitch.Hertz - Hum * Math.Max(1, Math.Round(pitch.Hertz / Hum))) < within;

    /// <summary>Whether a pitch may be no more than what the hum and a higher tone have in common.</summary>
    public bool IsCoincidence(Pitch pitch, double share) =>
        pitch.Hertz <= Hum * (1 + share)
        && Math.Abs(Hum / (pitch.Hertz * Math.Round(Hum / pitch.Hertz)) - 1) <= share
        && pitch.Rival > pitch.Clarity / 2;

    /// <summary>Whether the pitch is still there without the hum.</summary>
    public bool Confirms(Pitch pitch, double share) =>
        HumShare < AllHum && Pitch is { } heard && Math.Abs(heard.Hertz / pitch.Hertz - 1) <= share;
}
