using System.Numerics;
using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Sound;

/// <summary>How alike a stretch of sound and itself are when one is shifted against the other.</summary>
/// <remarks>
/// <para><b>Formula.</b> n(τ) = 2·Σ x_j·x_(j+τ) / Σ (x_j² + x_(j+τ)²), j from 0 to W − τ − 1: 1 for a shift by a whole period,
/// S/(S + N) when noise of power N lies over a tone of power S.</para>
/// <para><b>Units.</b> Shifts in samples; the likeness is a pure number, −1 to 1.</para>
/// <para><b>Source.</b> McLeod and Wyvill, "A Smarter Way to Find Pitch", Proc. International Computer Music Conference 2005:
/// the normalised square difference, its key maxima and the parabola through three points; the sums by the transform
/// (Wiener and Khinchin).</para>
/// <para><b>Valid when</b> the stretch holds two periods or more.</para>
/// </remarks>
public sealed class SquareDifference
{
    private readonly double[] products;
    private readonly double[] squares;

    private SquareDifference(double[] products, double[] squares)
    {
        this.products = products;
        this.squares = squares;
    }

    /// <summary>The longest shift known: half the stretch.</summary>
    public int Longest => products.Length - 1;

    /// <summary>Energy of the stretch.</summary>
    public double Energy => squares[0] / 2;

    /// <summary>The likeness at a shift; 0 where there is silence.</summary>
    public double this[int shift] => squares[shift] > 0 ? 2 * products[shift] / squares[shift] : 0;

    /// <summary>Of the samples from <paramref name="from"/> on.</summary>
    public static SquareDifference Of(double[] samples, int from, int length)
    {
        var spectrum = new Complex[FourierTransform.Room(2 * length)];
        for (var i = 0; i < length; i++)
            spectrum[i] = samples[from + i];
        FourierTransform.Forward(spectrum);
        for (var i = 0; i < spectrum.Length; i++)
            spectrum[i] *= Complex.Conjugate(spectrum[i]);
        FourierTransform.Back(spectrum);
        var products = new double[length / 2 + 1];
        var squares = new double[length / 2 + 1];
        squares[0] = 2 * spectrum[0].Real;
        for (var shift = 0; shift < products.Length; shift++)
        {
            products[shift] = spectrum[shift].Real;
            if (shift == 0)
                continue;
            var (first, last) = (samples[from + shift - 1], samples[from + length - shift]);
            // Rounding may leave a trace of what was taken off again.
            squares[shift] = Math.Max(0, squares[shift - 1] - first * first - last * last);
        }
        return new(products, squares);
    }

    /// <summary>Several stretches as one, each with the weight of its energy.</summary>
    public static SquareDifference Sum(IReadOnlyCollection<SquareDifference> stretches)
    {
        var length = stretches.First().products.Length;
        var sum = new SquareDifference(new double[length], new double[length]);
        foreach (var stretch in stretches)
            for (var shift = 0; shift < length; shift++)
            {
                sum.products[shift] += stretch.products[shift];
                sum.squares[shift] += stretch.squares[shift];
            }
        return sum;
    }

    /// <summary>The highest point of each stretch of shifts where the likeness is positive, the one around no shift left out.</summary>
    public IEnumerable<Peak> KeyMaxima()
    {
        var shift = 1;
        while (shift < Longest && this[shift] > 0)
            shift++;
        var highest = 0;
        for (; shift < Longest; shift++)
        {
            if (this[shift] > 0 && this[shift] >= this[shift - 1] && this[shift] > this[shift + 1])
                highest = highest == 0 || this[shift] > this[highest] ? shift : highest;
            if (this[shift] > 0 || highest == 0)
                continue;
            yield return At(highest);
            highest = 0;
        }
        if (highest > 0)
            yield return At(highest);
    }

    /// <summary>The highest point within a reach of a shift, or null when there is no summit.</summary>
    public Peak? Near(double shift, double reach)
    {
        var from = Math.Max(1, (int)Math.Ceiling(shift - reach));
        var to = Math.Min(Longest - 1, (int)Math.Floor(shift + reach));
        var best = from;
        for (var i = from; i <= to; i++)
            best = this[i] > this[best] ? i : best;
        return from < to && this[best] >= this[best - 1] && this[best] >= this[best + 1] ? At(best) : null;
    }

    private Peak At(int shift)
    {
        var (before, here, after) = (this[shift - 1], this[shift], this[shift + 1]);
        var bend = before - 2 * here + after;
        var aside = bend < 0 ? (before - after) / (2 * bend) : 0;
        return new(shift + aside, here - (before - after) * aside / 4);
    }
}

/// <summary>A summit of the likeness.</summary>
/// <param name="Shift">In samples, between them too.</param>
/// <param name="Likeness">Its height.</param>
public readonly record struct Peak(double Shift, double Likeness);
