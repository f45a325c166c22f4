using System.Globalization;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>An ISO metric screw thread with the bearing face of a hexagon head on it. Millimetres.</summary>
/// <param name="Diameter">Nominal diameter d.</param>
/// <param name="Pitch">Pitch P.</param>
/// <param name="WasherFace">d_w, least outer diameter of the bearing face.</param>
/// <param name="Hole">d_h, diameter of the clearance hole.</param>
/// <remarks>
/// <para><b>Source.</b> ISO 724 and ISO 898-1 for the diameters: d₂ = d − 3√3/8·P, d₃ = d − 17√3/24·P, A_s = π/4·((d₂ + d₃)/2)²
/// (from memory; areas checked against EN ISO 898-1 as reprinted). d_w: ISO 4014; d_h: ISO 273, medium; M5, M6, M20, M22 and M24
/// from memory. Pitches: ISO 261 (from memory).</para>
/// </remarks>
public readonly record struct MetricThread(double Diameter, double Pitch, double WasherFace, double Hole)
{
    private sealed record Size(double WasherFace, double Hole, double[] Pitches);

    // The first pitch is the coarse one, which is not written.
    private static readonly Dictionary<int, Size> Sizes = new()
    {
        [5] = new(6.88, 5.5, [0.8, 0.5]),
        [6] = new(8.88, 6.6, [1, 0.75]),
        [8] = new(11.63, 9, [1.25, 1, 0.75]),
        [10] = new(14.63, 11, [1.5, 1.25, 1, 0.75]),
        [12] = new(16.63, 13.5, [1.75, 1.5, 1.25, 1]),
        [14] = new(19.64, 15.5, [2, 1.5, 1.25, 1]),
        [16] = new(22.49, 17.5, [2, 1.5, 1]),
        [18] = new(25.34, 20, [2.5, 2, 1.5, 1]),
        [20] = new(28.19, 22, [2.5, 2, 1.5, 1]),
        [22] = new(31.71, 24, [2.5, 2, 1.5, 1]),
        [24] = new(33.61, 26, [3, 2, 1.5, 1]),
    };

    /// <summary>What can be read, in words.</summary>
    public static string Allowed { get; } =
        string.Join(
            ", ",
            Sizes.OrderBy(s => s.Key).Select(s => string.Create(CultureInfo.InvariantCulture, $"M{s.Key}"))
        ) + ", alone or with a fine pitch of ISO 261, e.g. \"M12x1.25\"";

    /// <summary>d₂, the pitch diameter.</summary>
    public double PitchDiameter => Diameter - 3 * Math.Sqrt(3) / 8 * Pitch;

    /// <summary>d₀ = (d₂ + d₃)/2, the diameter of the stress area.</summary>
    public double StressDiameter => (PitchDiameter + Diameter - 17 * Math.Sqrt(3) / 24 * Pitch) / 2;

    /// <summary>A_s in mm².</summary>
    public double StressArea => Math.PI / 4 * StressDiameter * StressDiameter;

    /// <summary>D_Km, the mean friction diameter of the bearing face.</summary>
    public double BearingDiameter => (WasherFace + Hole) / 2;

    /// <summary>Reads <c>M8</c> or <c>M12x1.25</c>; null when the size or its pitch is not in the tables.</summary>
    public static MetricThread? Read(string designation)
    {
        var parts = designation.Split('x', '×');
        if (!parts[0].StartsWith('M') || parts.Length > 2 || !Number(parts[0][1..], out var diameter))
            return null;
        if (diameter != Math.Floor(diameter) || !Sizes.TryGetValue((int)diameter, out var size))
            return null;
        var pitch = size.Pitches[0];
        if (parts.Length == 2 && !(Number(parts[1], out pitch) && size.Pitches.Contains(pitch)))
            return null;
        return new(diameter, pitch, size.WasherFace, size.Hole);
    }

    private static bool Number(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
        && number <= 1000;
}
