namespace Witnessmark.Paper.Drawings;

/// <summary>From which value to which a rule reaches, and where its ticks stand: steps of 1, 2 or 5 times a power of ten.</summary>
/// <param name="From">Value at the left edge.</param>
/// <param name="To">Value at the right edge, larger.</param>
/// <param name="Width">Distance between the edges.</param>
public sealed record RuleScale(double From, double To, double Width)
{
    private const double Margin = 0.12; // of the span, left free beyond the outermost number
    private const double Open = 0.3; // of the span, shown of a band that has no end on that side

    /// <summary>A scale on which every number of the view is visible, with some of what is forbidden beside the band.</summary>
    public static RuleScale For(RuleView view, double width)
    {
        var (low, high) = view.Level
            ? (Math.Min(0, view.Numbers.Min()), Math.Max(1, view.Numbers.Max()))
            : Bounds(view);
        if (high - low < 1e-9 * Math.Max(1, Math.Abs(high)))
            (low, high) = (low - Math.Max(0.5, Math.Abs(low) / 4), high + Math.Max(0.5, Math.Abs(high) / 4));
        var span = high - low;
        var left = low - Margin * span - (view.Limit is { Min: null, Max: not null } ? Open * span : 0);
        var right = high + Margin * span + (view.Limit is { Max: null, Min: not null } ? Open * span : 0);
        // A quantity that is never negative here begins at zero rather than before it.
        return new(low >= 0 && left < 0 && !view.Level ? 0 : left, right, width);
    }

    /// <summary>Where a value stands, from the left edge.</summary>
    public double At(double value) => (value - From) / (To - From) * Width;

    /// <summary>The smallest 1-2-5 step that is at least so far from the next.</summary>
    public double Step(double distance)
    {
        var least = distance / Width * (To - From);
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return power
            * (
                least <= power ? 1
                : least <= 2 * power ? 2
                : least <= 5 * power ? 5
                : 10
            );
    }

    /// <summary>Multiples of a step between the edges.</summary>
    public IEnumerable<double> Ticks(double step)
    {
        for (var n = Math.Ceiling(From / step); n * step <= To; n++)
            yield return Math.Round(n * step, 9);
    }

    private static (double, double) Bounds(RuleView view) => (view.Numbers.Min(), view.Numbers.Max());
}
