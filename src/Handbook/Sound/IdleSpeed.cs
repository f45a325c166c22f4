using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Speed of an idling engine from the frequency of its exhaust.</summary>
/// <remarks>
/// <para><b>Formula.</b> speed = f · (strokes/2) / (cylinders that fire one after the other in a cycle): all of them when they fire at
/// even intervals, 1 when they do not, because then only the whole cycle repeats.</para>
/// <para><b>Units.</b> f in Hz; speed in revolutions a minute (1/min).</para>
/// <para><b>Source.</b> Arithmetic: a four-stroke fires each cylinder once every two turns, a two-stroke every turn.</para>
/// <para><b>Valid when</b> f is the firing frequency (even) or that of the whole cycle (uneven), not an overtone of it. Cylinders that
/// fire together count as one. A cylinder that misfires makes the whole cycle the period.</para>
/// </remarks>
public static class IdleSpeed
{
    /// <summary>The speed of the crankshaft.</summary>
    /// <param name="frequency">Firing frequency, or with <paramref name="even"/> false that of the whole cycle; more than zero.</param>
    /// <param name="cylinders">1 or more.</param>
    /// <param name="even">Whether the cylinders fire at even intervals.</param>
    /// <param name="strokes">4 or 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">Strokes or cylinders are none of these.</exception>
    public static Frequency Of(Frequency frequency, int cylinders, bool even = true, int strokes = 4)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cylinders, 1);
        if (strokes is not (2 or 4))
            throw new ArgumentOutOfRangeException(nameof(strokes), strokes, "2 or 4.");
        var firings = even ? cylinders : 1;
        return frequency * (strokes / 2.0) / firings;
    }
}
