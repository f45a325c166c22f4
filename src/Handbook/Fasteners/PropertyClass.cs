namespace Witnessmark.Handbook.Fasteners;

/// <summary>Strength of a steel bolt, in N/mm².</summary>
/// <remarks><para><b>Source.</b> EN ISO 898-1, as reprinted: minimum 0.2 % proof strength and proof stress; 8.8 has two, up to and
/// above M16.</para></remarks>
/// <param name="Name">8.8, 10.9 or 12.9.</param>
/// <param name="Yield">R_p0.2 up to M16.</param>
/// <param name="Proof">S_p up to M16.</param>
/// <param name="YieldAboveM16">R_p0.2 above M16.</param>
/// <param name="ProofAboveM16">S_p above M16.</param>
public sealed record PropertyClass(string Name, double Yield, double Proof, double YieldAboveM16, double ProofAboveM16)
{
    /// <summary>The classes in the tables.</summary>
    public static IReadOnlyList<PropertyClass> All { get; } =
    [new("8.8", 640, 580, 660, 600), new("10.9", 940, 830, 940, 830), new("12.9", 1100, 970, 1100, 970)];

    /// <summary>R_p0.2 for a thread of this diameter.</summary>
    public double YieldOf(MetricThread thread) => thread.Diameter <= 16 ? Yield : YieldAboveM16;

    /// <summary>S_p for a thread of this diameter.</summary>
    public double ProofOf(MetricThread thread) => thread.Diameter <= 16 ? Proof : ProofAboveM16;
}
