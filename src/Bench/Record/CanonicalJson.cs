using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>The one text of a JSON value, so that a hash over it is the same everywhere.</summary>
/// <remarks>
/// <para><b>Source.</b> RFC 8785, JSON Canonicalization Scheme, 3.2: no white space, names in the order of their
/// UTF-16 code units, the shortest escapes.</para>
/// <para><b>Valid when</b> every number is an integer within ±2⁵³. Fractions are refused although the RFC has
/// a text for them: the ledger holds readings as the decimal text that was typed.</para>
/// </remarks>
public static class CanonicalJson
{
    private const long Widest = 1L << 53;

    // what is not written as it is: quotes, the backslash, and the control characters below the space
    private static readonly SearchValues<char> Escaped = SearchValues.Create([
        '"',
        '\\',
        .. Enumerable.Range(0, ' ').Select(c => (char)c),
    ]);

    /// <summary>The canonical text.</summary>
    /// <exception cref="FormatException">The value has no canonical text here: a fraction, a number beyond ±2⁵³,
    /// a name used twice in one object, or half a surrogate pair.</exception>
    public static string Of(JsonElement value)
    {
        var text = new StringBuilder();
        Append(text, value);
        return text.ToString();
    }

    /// <summary>The canonical text of an object that counts.</summary>
    public static string Of(IReadOnlyDictionary<string, int> counts)
    {
        var text = new StringBuilder();
        Append(text, counts);
        return text.ToString();
    }

    /// <summary>Writes the canonical text of a value behind another.</summary>
    /// <exception cref="FormatException">As above.</exception>
    internal static void Append(StringBuilder text, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                AppendObject(text, value);
                break;
            case JsonValueKind.Array:
                AppendArray(text, value);
                break;
            case JsonValueKind.String:
                Append(text, Text(value));
                break;
            case JsonValueKind.Number:
                AppendNumber(text, value);
                break;
            case JsonValueKind.Undefined:
                throw new FormatException("There is no JSON value.");
            default:
                text.Append(value.GetRawText());
                break;
        }
    }

    private static void AppendObject(StringBuilder text, JsonElement value)
    {
        var members = value.EnumerateObject().Select(m => (Name: Name(m), m.Value)).ToList();
        members.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        text.Append('{');
        for (var i = 0; i < members.Count; i++)
        {
            if (i > 0 && members[i].Name == members[i - 1].Name)
                throw new FormatException($"The name \"{members[i].Name}\" stands twice in one object.");
            if (i > 0)
                text.Append(',');
            Append(text, members[i].Name);
            text.Append(':');
            Append(text, members[i].Value);
        }
        text.Append('}');
    }

    private static void AppendArray(StringBuilder text, JsonElement value)
    {
        text.Append('[');
        var first = true;
        foreach (var item in value.EnumerateArray())
        {
            if (!first)
                text.Append(',');
            first = false;
            Append(text, item);
        }
        text.Append(']');
    }

    private static void AppendNumber(StringBuilder text, JsonElement value)
    {
        if (!value.TryGetDecimal(out var number) || decimal.Truncate(number) != number || Math.Abs(number) > Widest)
            throw new FormatException(
                $"The number {value.GetRawText()} is not an integer within ±{Widest}; measured values are written as text."
            );
        text.Append(((long)number).ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The same of an object that counts.</summary>
    internal static void Append(StringBuilder text, IReadOnlyDictionary<string, int> counts)
    {
        var separator = '{';
        foreach (var (name, count) in counts.OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            Append(text.Append(separator), name);
            text.Append(CultureInfo.InvariantCulture, $":{count}");
            separator = ',';
        }
        text.Append(counts.Count == 0 ? "{}" : "}");
    }

    /// <summary>Writes a text in quotes behind another.</summary>
    internal static void Append(StringBuilder text, string value)
    {
        text.Append('"');
        var rest = value.AsSpan();
        for (var at = rest.IndexOfAny(Escaped); at >= 0; at = rest.IndexOfAny(Escaped))
        {
            AppendEscaped(text.Append(rest[..at]), rest[at]);
            rest = rest[(at + 1)..];
        }
        text.Append(rest).Append('"');
    }

    private static void AppendEscaped(StringBuilder text, char c) =>
        _ = c switch
        {
            '"' => text.Append("\\\""),
            '\\' => text.Append("\\\\"),
            '\b' => text.Append("\\b"),
            '\t' => text.Append("\\t"),
            '\n' => text.Append("\\n"),
            '\f' => text.Append("\\f"),
            '\r' => text.Append("\\r"),
            _ => text.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)),
        };

    private static string Text(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw HalfAPair();
        }
    }

    private static string Name(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            throw HalfAPair();
        }
    }

    private static FormatException HalfAPair() => new("A text holds half a surrogate pair and is not Unicode.");
}
