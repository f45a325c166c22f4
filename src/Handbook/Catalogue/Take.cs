using System.Text.Json;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The kinds of things that a calculation can take from JSON.</summary>
public static class Take
{
    /// <summary>More elements than this in one list are refused: nobody reads as often, and work stays bounded.</summary>
    public const int LongestList = 10_000;

    /// <summary>A quantity that may be zero but not negative (a temperature: not below absolute zero).</summary>
    public static Input<T> Quantity<T>(string name, string meaning)
        where T : struct, IQuantity<T> =>
        T.Dimension == Dimension.Temperature
            ? Bounded<T>(name, meaning, b => b >= -273.15, "-273.15 °C or more")
            : Bounded<T>(name, meaning, b => b >= 0, "zero or more");

    /// <summary>A quantity above zero.</summary>
    public static Input<T> Positive<T>(string name, string meaning)
        where T : struct, IQuantity<T> => Bounded<T>(name, meaning, b => b > 0, "more than zero");

    /// <summary>A quantity of either sign, such as an offset.</summary>
    public static Input<T> Signed<T>(string name, string meaning)
        where T : struct, IQuantity<T> => Bounded<T>(name, meaning, _ => true, "any sign");

    /// <summary>A quantity within bounds of its own, tested in the base unit.</summary>
    public static Input<T> Bounded<T>(string name, string meaning, Func<double, bool> allowed, string bounds)
        where T : struct, IQuantity<T>
    {
        var kind = $"{Kinds.Of(T.Dimension)}, {bounds}";
        return new(
            name,
            kind,
            meaning,
            (e, path) =>
            {
                var written = Text(e, path, kind);
                return written.Unit.Dimension == T.Dimension && double.IsFinite(written.Base) && allowed(written.Base)
                    ? T.OfBase(written.Base)
                    : throw new MalformedGiven(path, Given.Found(e), kind);
            }
        );
    }

    /// <summary>A quantity of any dimension, in the unit that came in; a length may be zero but not negative.</summary>
    public static Input<Written> Any(string name, string meaning) =>
        new(
            name,
            AnyKind,
            meaning,
            (e, path) =>
            {
                var written = Text(e, path, AnyKind);
                return
                    double.IsFinite(written.Base) && !(written.Unit.Dimension == Dimension.Length && written.Value < 0)
                    ? written
                    : throw new MalformedGiven(path, Given.Found(e), AnyKind);
            }
        );

    /// <summary>A pure number as a JSON number.</summary>
    public static Input<double> Number(
        string name,
        string meaning,
        double min = double.NegativeInfinity,
        double max = double.PositiveInfinity
    )
    {
        var kind = Kinds.Number(min, max);
        return new(name, kind, meaning, (e, path) => Kinds.ReadNumber(e, path, kind, min, max))
        {
            Shape = InputShape.Number,
        };
    }

    /// <summary>A count as a JSON number without a fraction.</summary>
    public static Input<int> Count(string name, string meaning, int min, int max = int.MaxValue)
    {
        var kind = $"whole number, {min} or more" + (max == int.MaxValue ? "" : $", at most {max}");
        return new(
            name,
            kind,
            meaning,
            (e, path) =>
                e.ValueKind == JsonValueKind.Number && e.TryGetInt32(out var n) && n >= min && n <= max
                    ? n
                    : throw new MalformedGiven(path, Given.Found(e), kind)
        )
        {
            Shape = InputShape.Number,
        };
    }

    /// <summary>True or false.</summary>
    public static Input<bool> Truth(string name, string meaning) =>
        new(
            name,
            "true or false",
            meaning,
            (e, path) =>
                e.ValueKind switch
                {
                    JsonValueKind.True => true,
                    JsonValueKind.False => false,
                    _ => throw new MalformedGiven(path, Given.Found(e), "true or false"),
                }
        )
        {
            Shape = InputShape.Truth,
        };

    /// <summary>Text, at most 200 characters.</summary>
    public static Input<string> Words(string name, string meaning) =>
        new(
            name,
            "text",
            meaning,
            (e, path) =>
                e.ValueKind == JsonValueKind.String && e.GetString() is { Length: <= 200 } text
                    ? text
                    : throw new MalformedGiven(path, Given.Found(e), "text of at most 200 characters")
        );

    /// <summary>One of a few words.</summary>
    public static Input<string> OneOf(string name, string meaning, params string[] words)
    {
        var kind = string.Join(" or ", words.Select(w => $"\"{w}\""));
        return new(
            name,
            kind,
            meaning,
            (e, path) =>
                e.ValueKind == JsonValueKind.String && words.Contains(e.GetString())
                    ? e.GetString()!
                    : throw new MalformedGiven(path, Given.Found(e), kind)
        )
        {
            Choices = words,
        };
    }

    /// <summary>A calendar day, <c>"2026-11-25"</c>.</summary>
    public static Input<DateOnly> Day(string name, string meaning) =>
        new(
            name,
            "day, e.g. \"2026-11-25\"",
            meaning,
            (e, path) =>
                e.ValueKind == JsonValueKind.String
                && DateOnly.TryParseExact(
                    e.GetString(),
                    "yyyy-MM-dd",
                    System.Globalization.CultureInfo.InvariantCulture,
                    System.Globalization.DateTimeStyles.None,
                    out var day
                )
                    ? day
                    : throw new MalformedGiven(path, Given.Found(e), "day, e.g. \"2026-11-25\"")
        );

    /// <summary>An object with keys of its own.</summary>
    public static Input<T> Object<T>(string name, string meaning, Input[] fields, Func<Given, T> read) =>
        new(name, "object", meaning, (e, path) => read(new Given(e, path, fields)))
        {
            Fields = fields,
            Shape = InputShape.Object,
        };

    /// <summary>A list of objects.</summary>
    public static Input<T[]> Objects<T>(
        string name,
        string meaning,
        Input[] fields,
        Func<Given, T> read,
        int least = 1
    ) => List(Object(name, meaning, fields, read), least) with { Kind = $"list of objects, {least} or more" };

    /// <summary>A list of whatever one element is.</summary>
    public static Input<T[]> List<T>(Input<T> element, int least = 1)
    {
        var kind = $"list, {least} or more: {element.Kind}";
        return new(
            element.Name,
            kind,
            element.Meaning,
            (e, path) =>
            {
                if (e.ValueKind != JsonValueKind.Array || e.GetArrayLength() < least)
                    throw new MalformedGiven(path, Given.Found(e), kind);
                if (e.GetArrayLength() > LongestList)
                    throw new MalformedGiven(path, $"{e.GetArrayLength()} elements", $"at most {LongestList}");
                var items = new T[e.GetArrayLength()];
                var i = 0;
                foreach (var item in e.EnumerateArray())
                {
                    items[i] = element.Read(item, $"{path}.{i}");
                    i++;
                }
                return items;
            }
        )
        {
            Fields = element.Fields,
            Shape = InputShape.List,
            Element = element,
        };
    }

    private const string AnyKind = "text with a unit, e.g. \"50 mm\"; a length zero or more";

    private static Written Text(JsonElement e, string path, string kind)
    {
        if (e.ValueKind != JsonValueKind.String)
            throw new MalformedGiven(path, Given.Found(e), kind);
        return Written.Read(e.GetString()!, out var written) is { } why
            ? throw new MalformedGiven(path, $"{Given.Found(e)}, {why}", kind)
            : written;
    }
}
