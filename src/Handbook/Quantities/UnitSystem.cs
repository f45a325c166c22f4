namespace Witnessmark.Handbook.Quantities;

/// <summary>The units in which somebody wants to read.</summary>
public enum UnitSystem
{
    /// <summary>Each quantity as it was read or printed.</summary>
    AsWritten,

    /// <summary>The SI and the units that are used with it.</summary>
    Metric,

    /// <summary>The customary units of the United States.</summary>
    UsCustomary,
}

/// <summary>Which unit of one system stands for a unit of the other.</summary>
/// <remarks>
/// <para><b>Source.</b> NIST SP 811 (2008), appendix B.8 has the pairs; which of several is used in a workshop (psi for a tyre, lbf·ft for a
/// bolt) is common practice, no source.</para>
/// </remarks>
public static class UnitSystems
{
    private static readonly (string Metric, string Customary)[] Pairs =
    [
        ("mm", "in"),
        ("km", "mi"),
        ("L", "US qt"),
        ("mL", "US fl oz"),
        ("N·m", "lbf·ft"),
        ("N", "lbf"),
        ("kPa", "psi"),
        ("°C", "°F"),
        ("km/h", "mph"),
        ("N/mm", "lbf/in"),
        ("kg", "lb"),
    ];

    // units that no pair gives back: they are read in either system through another one
    private static readonly (string Unit, string Metric, string Customary)[] Further =
    [
        ("lbf·in", "N·m", "lbf·in"),
        ("kgf·m", "N·m", "lbf·ft"),
        ("kN", "kN", "lbf"),
        ("bar", "bar", "psi"),
        ("imp qt", "L", "US qt"),
    ];

    private static readonly Dictionary<(string, UnitSystem), Unit> Others = Pairs
        .SelectMany(p =>
            new[]
            {
                (From: p.Metric, System: UnitSystem.UsCustomary, To: p.Customary),
                (From: p.Customary, System: UnitSystem.Metric, To: p.Metric),
            }
        )
        .Concat(
            Further.SelectMany(f =>
                new[]
                {
                    (From: f.Unit, System: UnitSystem.Metric, To: f.Metric),
                    (From: f.Unit, System: UnitSystem.UsCustomary, To: f.Customary),
                }
            )
        )
        .Where(o => o.From != o.To)
        .ToDictionary(o => (o.From, o.System), o => UnitTable.Named(o.To));

    /// <summary>The systems as files and options name them, in the order of <see cref="UnitSystem"/>.</summary>
    public static IReadOnlyList<string> Words { get; } = ["as-written", "metric", "us"];

    /// <summary>The system so named; null where there is none.</summary>
    /// <param name="word">Its word.</param>
    public static UnitSystem? Named(string word) =>
        Words.ToList().IndexOf(word) is >= 0 and var at ? (UnitSystem)at : null;

    /// <summary>The unit that a quantity is to be given in beside its own; null where its own is right.</summary>
    /// <param name="unit">The unit it was read or printed in.</param>
    /// <param name="wanted">The system that somebody wants to read.</param>
    public static Unit? Other(Unit unit, UnitSystem wanted) => Others.GetValueOrDefault((unit.Symbol, wanted));
}
