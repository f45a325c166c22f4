using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>Pitches of spokes of one side beside each other. It judges nothing: how much they may differ is not written here.</summary>
/// <remarks>
/// <para><b>Formula.</b> Of equal spokes the tension grows with the square of the pitch, so that the lowest has (f_low/f_high)² of the
/// tension of the highest.</para>
/// <para><b>Source.</b> Mersenne's law, as in <c>belt-tension</c>.</para>
/// <para><b>Valid when</b> the spokes are equally long and thick, and cross each other alike.</para>
/// </remarks>
/// <param name="Kept">In the order in which they were heard.</param>
public sealed record ComparedPitches(IReadOnlyList<Heard> Kept)
{
    /// <summary>None yet.</summary>
    public static ComparedPitches None { get; } = new([]);

    /// <summary>With one more.</summary>
    public ComparedPitches With(Heard heard) => new([.. Kept, heard]);

    /// <summary>Place of the lowest, from 1; null with fewer than two.</summary>
    public int? Lowest => Kept.Count < 2 ? null : Place(Kept.MinBy(h => h.Frequency.Hertz)!);

    /// <summary>Place of the highest, from 1.</summary>
    public int? Highest => Kept.Count < 2 ? null : Place(Kept.MaxBy(h => h.Frequency.Hertz)!);

    /// <summary>Tension of the lowest as a share of that of the highest; null with fewer than two.</summary>
    public double? LeastShare =>
        Kept.Count < 2 ? null : Math.Pow(Kept.Min(h => h.Frequency.Hertz) / Kept.Max(h => h.Frequency.Hertz), 2);

    private int Place(Heard heard) => Kept.ToList().IndexOf(heard) + 1;
}
