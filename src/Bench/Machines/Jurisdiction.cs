using Witnessmark.Bench.Figures;

namespace Witnessmark.Bench.Machines;

/// <summary>
/// The place whose law counts, by its code in ISO 3166: a country (part 1, two letters) or a part of one (part 2:
/// <c>US-MD</c>).
/// </summary>
/// <param name="Code">The code in capital letters.</param>
public sealed record Jurisdiction(string Code)
{
    // of the European Union in 2026, from memory
    private const string Members = "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK";

    /// <summary>What a code looks like, for whoever wrote another one.</summary>
    public const string Right = "a code of ISO 3166 in capital letters: \"DE\", or with its part \"US-MD\"";

    /// <summary>Reads a code, or nothing when it is none.</summary>
    public static Jurisdiction? Read(string written) =>
        JurisdictionCode.Read(written).Code == written ? new(written) : null;

    /// <summary>
    /// Whether the law of a place counts here: that of this place, of the country that it is a part of, or of the Union that
    /// the country is a member of.
    /// </summary>
    /// <param name="place">The code of a place.</param>
    public bool Has(string place) =>
        place.Equals(Code, StringComparison.OrdinalIgnoreCase)
        || Code.StartsWith(place + "-", StringComparison.OrdinalIgnoreCase)
        || (place.Equals("EU", StringComparison.OrdinalIgnoreCase) && Members.Contains(Code[..2]));

    /// <inheritdoc/>
    public override string ToString() => Code;
}
