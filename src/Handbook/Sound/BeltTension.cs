using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Tension of a belt from the frequency at which its free span vibrates when plucked.</summary>
/// <remarks>
/// <para><b>Formula.</b> T = 4·m·L²·f²: the span moves as half a wave, λ = 2L, and a wave runs along a string at c = √(T/m) = f·λ
/// (Mersenne's law).</para>
/// <para><b>Units.</b> m is the mass of the belt for each length, kg/m; L the free span between the points where the belt leaves the
/// pulleys, m; f in Hz, T in N.</para>
/// <para><b>Source.</b> Transverse vibration of a string: OpenStax, University Physics 1, 16.3 (speed of a wave) and 16.6 (normal
/// modes, example 16.7).</para>
/// <para><b>Valid when</b> the belt bends easily over its span and swings in one loop. A stiff belt or a short span (less than some
/// twenty thicknesses) vibrates faster than a string, so that the answer is too high; the maker's figure in Hz for the same span
/// needs no such reckoning.</para>
/// </remarks>
public static class BeltTension
{
    /// <summary>The tension.</summary>
    /// <param name="frequency">Of the span when plucked, more than zero.</param>
    /// <param name="freeSpan">More than zero.</param>
    /// <param name="mass">Mass of the belt for each length, more than zero.</param>
    public static Force Of(Frequency frequency, Length freeSpan, LinearDensity mass)
    {
        var waveSpeed = 2 * freeSpan.Millimetres / 1000 * frequency.Hertz; // m/s
        return new(mass.KilogramsPerMetre * waveSpeed * waveSpeed);
    }
}
