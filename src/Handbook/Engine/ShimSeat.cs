using System.Globalization;

namespace Witnessmark.Handbook.Engine;

/// <summary>A valve in whole micrometres: which shims fit it and how far from the target they leave it.</summary>
internal readonly struct ShimSeat
{
    private readonly int sum;
    private readonly int min;
    private readonly int max;
    private readonly int twiceTarget;

    public ShimSeat(Valve valve)
    {
        Shim = Micrometres.Nearest(valve.Shim);
        sum = Shim + Micrometres.Nearest(valve.Clearance);
        min = Micrometres.AtLeast(valve.Min);
        max = Micrometres.AtMost(valve.Max);
        twiceTarget = valve.Target is { } target ? 2 * Micrometres.Nearest(target) : min + max;
    }

    /// <summary>The shim in it.</summary>
    public int Shim { get; }

    public int Thinnest => sum - max;

    public int Thickest => sum - min;

    public int Clearance(int shim) => sum - shim;

    public bool Takes(int shim) => shim > 0 && shim >= Thinnest && shim <= Thickest;

    /// <summary>Four times the squared deviation: the middle of a limit may lie on half a micrometre.</summary>
    public long FourSquares(int shim)
    {
        long twice = 2 * Clearance(shim) - twiceTarget;
        return twice * twice;
    }

    /// <summary>The best thickness of the series that fits, or null. Of two equally near, the thinner: clearances mostly close with use.</summary>
    public int? Best(ShimSeries series)
    {
        var ideal = (sum - twiceTarget / 2.0) / 1000;
        var step = (ideal - series.From.Millimetres) / series.Step.Millimetres;
        var last = Math.Floor((series.To - series.From) / series.Step + 1e-6);
        int? best = null;
        for (var k = Math.Floor(step) - 1; k <= Math.Floor(step) + 2; k++)
        {
            if (k < 0 || k > last)
                continue;
            var size = Micrometres.Nearest(series.From + series.Step * k);
            if (Takes(size) && (best is not { } known || FourSquares(size) < FourSquares(known)))
                best = size;
        }
        return best;
    }

    public string Range() =>
        string.Create(CultureInfo.InvariantCulture, $"{Thinnest / 1000.0:0.000} to {Thickest / 1000.0:0.000} mm");
}
