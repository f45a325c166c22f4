using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Tyres;

/// <summary>What the law of one place asks of the tread of one kind of machine: a row of the table of minimum tread depths.</summary>
/// <param name="Jurisdiction">Code of the place (ISO 3166).</param>
/// <param name="Name">Its name.</param>
/// <param name="Vehicle">As which the law counts the machine.</param>
/// <param name="Printed">The depth as the law prints it, <c>1/32 in</c>; null when it gives none.</param>
/// <param name="Depth">The same, or null.</param>
/// <param name="Clause">Where the law stands.</param>
/// <param name="Asks">Where the depth must be met, or what is asked in place of a depth.</param>
public sealed record TreadLaw(
    string Jurisdiction,
    string Name,
    RoadVehicle Vehicle,
    string? Printed,
    Length? Depth,
    string Clause,
    string Asks
)
{
    private static readonly TreadLaw[] All = [.. PublishedTable.Read("minimum-tread-depth.csv").Rows.Select(Read)];

    /// <summary>The places in the table, as a person may name them.</summary>
    public static string Known { get; } = string.Join(", ", All.Select(l => $"{l.Jurisdiction} ({l.Name})").Distinct());

    /// <summary>The laws of a place; none when it is not in the table.</summary>
    /// <param name="place">Its code or its name; small letters too.</param>
    public static IEnumerable<TreadLaw> Of(string place) => All.Where(l => l.IsCalled(place));

    private bool IsCalled(string place) =>
        place.Equals(Jurisdiction, StringComparison.OrdinalIgnoreCase)
        || place.Equals(Name, StringComparison.OrdinalIgnoreCase);

    private static TreadLaw Read(PublishedTable.Row row)
    {
        var unit = UnitTable.Named(row["unit"]);
        var over = row.Number("divisor");
        var depth = row.Maybe("printed");
        return new(
            row["jurisdiction"],
            row["name"],
            row["vehicle"] == "moped" ? RoadVehicle.Moped : RoadVehicle.Motorcycle,
            depth is null ? null
                : over == 1 ? $"{row["printed"]} {unit.Symbol}"
                : $"{row["printed"]}/{row["divisor"]} {unit.Symbol}",
            depth is { } number ? new Length(unit.ToBase(number / over)) : null,
            row["clause"],
            row["asks"]
        );
    }
}
