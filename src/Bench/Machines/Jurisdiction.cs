using System.Text.RegularExpressions;

namespace Witnessmark.Bench.Machines;

/// <summary>
/// The place whose law counts, by its code in ISO 3166: a country (part 1, two letters) or a part of one (part 2:
/// <c>US-MD</c>). Whether the code is taken is not checked: the lists change.
/// </summary>
/// <param name="Code">The code in capital letters.</param>
public sealed partial record Jurisdiction(string Code)
{
    /// <summary>What a code looks like, for whoever wrote another one.</summary>
    public const string Right = "a code of ISO 3166 in capital letters: \"DE\", or with its part \"US-MD\"";

    /// <summary>Reads a code, or nothing when it is none.</summary>
    public static Jurisdiction? Read(string written) => Form().IsMatch(written) ? new(written) : null;

    /// <summary>Whether the law of a place counts here: that of this place, or of the country that it is a part of.</summary>
    /// <param name="place">The code of a place.</param>
    public bool Has(string place) =>
        place.Equals(Code, StringComparison.OrdinalIgnoreCase)
        || Code.StartsWith(place + "-", StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override string ToString() => Code;

    [GeneratedRegex(@"\A[A-Z]{2}(-[A-Z0-9]{1,3})?\z")]
    private static partial Regex Form();
}
