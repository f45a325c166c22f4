namespace Witnessmark.Handbook.Quantities;

/// <summary>
/// Every unit of the contract. Factors are written out of their exact parts.
/// </summary>
/// <remarks>
/// <para><b>Source.</b> NIST SP 811 (2008), appendix B.8: inch 25.4 mm, mile 1609.344 m, pound 453.59237 g, standard
/// gravity 9.80665 m/s² (all exact); US gallon = 231 in³; imperial gallon = 4.54609 L (exact).</para>
/// </remarks>
public static class UnitTable
{
    private const double Inch = 25.4; // mm, exact
    private const double Foot = 12 * Inch;
    private const double Gravity = 9.80665; // m/s², exact
    private const double PoundMass = 453.59237; // g, exact
    private const double PoundForce = PoundMass / 1000 * Gravity; // N
    private const double UsGallon = 231 * Inch * Inch * Inch / 1e6; // L
    private const double ImperialGallon = 4.54609; // L, exact

    private static readonly Unit[] Units =
    [
        new("1", Dimension.Number, 1),
        new("%", Dimension.Number, 0.01),
        new("mm", Dimension.Length, 1),
        new("in", Dimension.Length, Inch),
        new("m", Dimension.Length, 1000),
        new("km", Dimension.Length, 1e6),
        new("mi", Dimension.Length, 5280 * Foot),
        new("mm²", Dimension.Area, 1),
        new("µm²", Dimension.Area, 1e-6),
        new("L", Dimension.Volume, 1),
        new("mL", Dimension.Volume, 0.001),
        new("US qt", Dimension.Volume, UsGallon / 4),
        new("imp qt", Dimension.Volume, ImperialGallon / 4),
        new("US fl oz", Dimension.Volume, UsGallon / 128),
        new("rad", Dimension.Angle, 1),
        new("deg", Dimension.Angle, Math.PI / 180),
        new("turn", Dimension.Turn, 1),
        new("flat", Dimension.Flat, 1),
        new("N·m", Dimension.Torque, 1),
        new("lbf·ft", Dimension.Torque, PoundForce * Foot / 1000),
        new("lbf·in", Dimension.Torque, PoundForce * Inch / 1000),
        new("kgf·m", Dimension.Torque, Gravity),
        new("N", Dimension.Force, 1),
        new("kN", Dimension.Force, 1000),
        new("lbf", Dimension.Force, PoundForce),
        new("kPa", Dimension.Pressure, 1),
        new("bar", Dimension.Pressure, 100),
        new("psi", Dimension.Pressure, PoundForce / (Inch * Inch) * 1000),
        new("°C", Dimension.Temperature, 1),
        new("°F", Dimension.Temperature, 5.0 / 9, -160.0 / 9),
        new("km/h", Dimension.Speed, 1),
        new("mph", Dimension.Speed, 5280 * Foot / 1e6),
        new("s", Dimension.Duration, 1),
        new("min", Dimension.Duration, 60),
        new("day", Dimension.Duration, 86400),
        new("month", Dimension.CalendarMonths, 1),
        new("V", Dimension.Voltage, 1),
        new("A", Dimension.Current, 1),
        new("Ω", Dimension.Resistance, 1),
        new("mΩ", Dimension.Resistance, 0.001),
        new("W", Dimension.Power, 1),
        new("Ah", Dimension.Charge, 1),
        new("N/mm", Dimension.Stiffness, 1),
        new("lbf/in", Dimension.Stiffness, PoundForce / Inch),
        new("g", Dimension.Mass, 1),
        new("kg", Dimension.Mass, 1000),
        new("lb", Dimension.Mass, PoundMass),
        new("Hz", Dimension.Frequency, 1),
        new("1/min", Dimension.Frequency, 1.0 / 60),
        new("mm²/s", Dimension.KinematicViscosity, 1),
        new("mPa·s", Dimension.DynamicViscosity, 1),
        new("mm²/mm", Dimension.AreaPerLength, 1),
        new("mm²/turn", Dimension.AreaPerTurn, 1),
        new("mm/turn", Dimension.LengthPerTurn, 1),
        new("mm/mm", Dimension.LengthPerLength, 1),
        new("1/K", Dimension.PerTemperature, 1),
        new("kg/m", Dimension.MassPerLength, 1),
        new("km/√day", Dimension.LengthPerRootDuration, 1),
    ];

    // Only spellings that a keyboard without · and ² produces; no unit has two meanings.
    private static readonly (string Written, string Symbol)[] OtherSpellings =
    [
        ("Nm", "N·m"),
        ("N*m", "N·m"),
        ("lbf*ft", "lbf·ft"),
        ("lbf*in", "lbf·in"),
        ("kgf*m", "kgf·m"),
        ("l", "L"),
        ("ml", "mL"),
        ("mm2", "mm²"),
        ("μm²", "µm²"), // Greek mu beside the micro sign
        ("um2", "µm²"),
        ("mm2/s", "mm²/s"),
        ("mm2/mm", "mm²/mm"),
        ("mm2/turn", "mm²/turn"),
        ("mPa*s", "mPa·s"),
        ("\u2126", "Ω"), // ohm sign beside the Greek letter
        ("m\u2126", "mΩ"),
        ("ohm", "Ω"),
        ("mohm", "mΩ"),
        ("turns", "turn"),
        ("flats", "flat"),
        ("days", "day"),
        ("months", "month"),
    ];

    private static readonly Dictionary<string, Unit> BySpelling = Units
        .Select(u => (Written: u.Symbol, Unit: u))
        .Concat(OtherSpellings.Select(s => (s.Written, Unit: Units.Single(u => u.Symbol == s.Symbol))))
        .ToDictionary(p => p.Written, p => p.Unit, StringComparer.Ordinal);

    private static readonly Dictionary<string, Unit>.AlternateLookup<ReadOnlySpan<char>> BySpan =
        BySpelling.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>All units, the first of each dimension being the one that answers use unless the contract names another.</summary>
    public static IReadOnlyList<Unit> All => Units;

    /// <summary>The unit so written, or null when there is none.</summary>
    public static Unit? Find(ReadOnlySpan<char> written) => BySpan.TryGetValue(written, out var unit) ? unit : null;

    /// <summary>The unit so written, for callers that name it in code.</summary>
    /// <exception cref="ArgumentException">There is no such unit.</exception>
    public static Unit Named(string symbol) =>
        Find(symbol) ?? throw new ArgumentException("There is no unit \"{symbol}\".", nameof(symbol));

    /// <summary>The units that measure one dimension, in the order of the contract.</summary>
    public static IEnumerable<Unit> Measuring(Dimension dimension) => Units.Where(u => u.Dimension == dimension);
}
