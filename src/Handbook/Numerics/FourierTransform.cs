using System.Numerics;

namespace Witnessmark.Handbook.Numerics;

/// <summary>The discrete Fourier transform of a power of two of samples.</summary>
/// <remarks>
/// <para><b>Formula.</b> X_k = Σ x_n · exp(−2πi·k·n/N), n from 0 to N − 1; back with the sign turned and divided by N.</para>
/// <para><b>Units.</b> Those of the samples.</para>
/// <para><b>Source.</b> Cooley and Tukey, Mathematics of Computation 19 (1965) 297: decimation in time, radix 2.</para>
/// <para><b>Valid when</b> N is a power of two; pad with zeros otherwise.</para>
/// </remarks>
public static class FourierTransform
{
    /// <summary>Transforms in place.</summary>
    /// <exception cref="ArgumentException">The length is not a power of two.</exception>
    public static void Forward(Complex[] x) => Transform(x, -1);

    /// <summary>Transforms back in place.</summary>
    /// <exception cref="ArgumentException">The length is not a power of two.</exception>
    public static void Back(Complex[] x)
    {
        Transform(x, 1);
        for (var i = 0; i < x.Length; i++)
            x[i] /= x.Length;
    }

    /// <summary>The smallest power of two that is not below <paramref name="length"/>.</summary>
    public static int Room(int length) => (int)BitOperations.RoundUpToPowerOf2((uint)length);

    private static void Transform(Complex[] x, int sign)
    {
        if (!BitOperations.IsPow2(x.Length))
            throw new ArgumentException("A power of two of samples is needed.", nameof(x));
        Interleave(x);
        var turns = Turns(x.Length / 2, sign);
        for (var half = 1; half < x.Length; half *= 2)
        for (var k = 0; k < half; k++)
            Pair(x, k, half, turns[k * (turns.Length / half)]);
    }

    // Written out in real numbers: a browser interprets the program, and there each operator of complex ones is a call.
    private static void Pair(Complex[] x, int first, int half, Complex turn)
    {
        var (c, s) = (turn.Real, turn.Imaginary);
        for (var even = first; even < x.Length; even += 2 * half)
        {
            var (a, b) = (x[even], x[even + half]);
            double ar = a.Real,
                ai = a.Imaginary,
                br = b.Real,
                bi = b.Imaginary;
            double re = c * br - s * bi,
                im = s * br + c * bi;
            x[even] = new(ar + re, ai + im);
            x[even + half] = new(ar - re, ai - im);
        }
    }

    private static Complex[] Turns(int half, int sign) =>
        [.. Enumerable.Range(0, half).Select(k => Complex.FromPolarCoordinates(1, sign * Math.PI * k / half))];

    // Each sample goes where its number leads with the bits in reverse.
    private static void Interleave(Complex[] x)
    {
        for (int i = 1, j = 0; i < x.Length; i++)
        {
            var bit = x.Length / 2;
            for (; (j & bit) != 0; bit /= 2)
                j ^= bit;
            j |= bit;
            if (i < j)
                (x[i], x[j]) = (x[j], x[i]);
        }
    }
}
