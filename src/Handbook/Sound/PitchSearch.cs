namespace Witnessmark.Handbook.Sound;

/// <summary>Looks for one pitch through all stretches of a sound.</summary>
/// <param name="rate">Samples in a second.</param>
/// <param name="lowest">Lowest pitch looked for, hertz.</param>
/// <param name="highest">Highest, hertz.</param>
internal sealed class PitchSearch(double rate, double lowest, double highest)
{
    /// <summary>Periods of the lowest pitch in one stretch.</summary>
    public const double PeriodsInStretch = 4;

    /// <summary>Stretches that a recording must hold at least, end to end.</summary>
    public const double LeastStretches = 1.5;

    /// <summary>Stretches that begin within the length of one.</summary>
    private const int Overlap = 4;

    private const double ShortestStretch = 0.25; // s

    /// <summary>Of the likeness of the best shift in the range, what an earlier one needs to be the period.</summary>
    private const double FirstAmongEquals = 0.9;

    /// <summary>Below this a stretch has no tone.</summary>
    private const double LeastClarity = 0.5;

    /// <summary>Pitches no further apart than this share are one.</summary>
    private const double Same = 0.03;

    /// <summary>Share of the energy with a tone that must have this tone.</summary>
    private const double Majority = 0.6;

    /// <summary>Most periods over which the shift is followed.</summary>
    private const int MostPeriods = 8;

    public Pitch? In(double[] samples)
    {
        var stretches = Stretches(samples);
        var heard = stretches
            .Select(s => (Stretch: s, Shift: Period(s)))
            .Where(h => h.Shift is not null)
            .Select(h => (h.Stretch, Frequency: rate / h.Shift!.Value))
            .ToArray();
        if (heard.Length < 2)
            return null;
        var all = heard.Sum(h => h.Stretch.Energy);
        var agreed = heard
            .Select(h => heard.Where(o => Math.Abs(o.Frequency / h.Frequency - 1) < Same).ToArray())
            .MaxBy(g => g.Sum(h => h.Stretch.Energy))!;
        if (agreed.Length < 2 || agreed.Sum(h => h.Stretch.Energy) < Majority * all)
            return null;
        var sum = SquareDifference.Sum([.. agreed.Select(a => a.Stretch)]);
        var weighted = agreed.Sum(a => a.Frequency * a.Stretch.Energy) / agreed.Sum(a => a.Stretch.Energy);
        if (Followed(sum, rate / weighted) is not { } period)
            return null;
        return new(
            rate / period.Shift,
            Math.Min(1, period.Likeness),
            Math.Max(Scatter(agreed), period.Error * rate / (period.Shift * period.Shift)),
            sum.KeyMaxima()
                .TakeWhile(p => p.Shift < 0.75 * period.Shift)
                .Select(p => p.Likeness)
                .DefaultIfEmpty(0)
                .Max()
        );
    }

    private List<SquareDifference> Stretches(double[] samples)
    {
        var length = (int)(Math.Max(PeriodsInStretch / lowest, ShortestStretch) * rate);
        length = Math.Min(length, (int)(samples.Length / LeastStretches));
        var stretches = new List<SquareDifference>();
        for (var from = 0; from + length <= samples.Length; from += length / Overlap)
            stretches.Add(SquareDifference.Of(samples, from, length));
        return stretches;
    }

    private double? Period(SquareDifference stretch)
    {
        var peaks = stretch.KeyMaxima().ToArray();
        var (shortest, longest) = (rate / highest, rate / lowest);
        var best = peaks
            .Where(p => p.Shift >= shortest && p.Shift <= longest)
            .Select(p => p.Likeness)
            .DefaultIfEmpty(0)
            .Max();
        if (best < LeastClarity)
            return null;
        var first = peaks.First(p => p.Likeness >= FirstAmongEquals * best);
        return first.Shift >= shortest && first.Shift <= longest ? Followed(stretch, first.Shift)?.Shift : null;
    }

    // The shift by many periods tells one of them more finely; straight line through the origin, weights all equal.
    private (double Shift, double Likeness, double Error)? Followed(SquareDifference sum, double coarse)
    {
        if (sum.Near(coarse, coarse / 4) is not { Likeness: >= LeastClarity } first)
            return null;
        var shifts = new List<double> { first.Shift };
        double period = first.Shift;
        double squares = 1;
        for (var k = 2; k <= MostPeriods; k++)
        {
            if (sum.Near(k * period, period / 6) is not { } peak || peak.Likeness < 0.6 * first.Likeness)
                break;
            shifts.Add(peak.Shift);
            squares += k * k;
            period = shifts.Select((s, i) => (i + 1) * s).Sum() / squares;
        }
        var residual = shifts.Select((s, i) => Math.Pow(s - (i + 1) * period, 2)).Sum();
        var error = shifts.Count > 1 ? Math.Sqrt(residual / (shifts.Count - 1) / squares) : 0;
        return (period, first.Likeness, error);
    }

    // Of the mean; stretches that overlap tell little more than half of them would end to end.
    private static double Scatter((SquareDifference Stretch, double Frequency)[] agreed)
    {
        var weight = agreed.Sum(a => a.Stretch.Energy);
        var mean = agreed.Sum(a => a.Stretch.Energy * a.Frequency) / weight;
        var variance = agreed.Sum(a => a.Stretch.Energy * Math.Pow(a.Frequency - mean, 2)) / weight;
        var number = weight * weight / agreed.Sum(a => a.Stretch.Energy * a.Stretch.Energy) / (Overlap / 2.0);
        return Math.Sqrt(variance / Math.Max(1, number));
    }
}

/// <summary>A pitch that was found.</summary>
/// <param name="Hertz">Its frequency.</param>
/// <param name="Clarity">Likeness of the sound one period later.</param>
/// <param name="Deviation">One standard deviation of the frequency, hertz.</param>
/// <param name="Rival">Likeness at the best shorter shift.</param>
internal sealed record Pitch(double Hertz, double Clarity, double Deviation, double Rival);
