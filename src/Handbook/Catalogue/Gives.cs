using System.Text.Json.Nodes;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The outputs of a calculation on their way to JSON.</summary>
public sealed class Gives
{
    /// <summary>As JSON.</summary>
    public JsonObject Json { get; } = [];

    /// <summary>A quantity in the unit that the contract names.</summary>
    public Gives With<T>(string name, T quantity, string unit)
        where T : struct, IQuantity<T> => With(name, UnitTable.Named(unit).FromBase(quantity.Base), unit);

    /// <summary>A quantity in the unit that the contract names, left out when there is none.</summary>
    public Gives With<T>(string name, T? quantity, string unit)
        where T : struct, IQuantity<T> => quantity is { } q ? With(name, q, unit) : this;

    /// <summary>A number that is already in the unit.</summary>
    public Gives With(string name, double value, string unit)
    {
        Json.Add(name, Quantity(value, unit));
        return this;
    }

    /// <summary>A number that is already in the unit, left out when there is none.</summary>
    public Gives With(string name, double? value, string unit) => value is { } v ? With(name, v, unit) : this;

    /// <summary>A name, a code or a date; left out when there is none.</summary>
    public Gives With(string name, string? text)
    {
        if (text is not null)
            Json.Add(name, JsonValue.Create(text));
        return this;
    }

    /// <summary>A count, bare.</summary>
    public Gives With(string name, int count)
    {
        Json.Add(name, JsonValue.Create(count));
        return this;
    }

    /// <summary>A truth value, bare.</summary>
    public Gives With(string name, bool truth)
    {
        Json.Add(name, JsonValue.Create(truth));
        return this;
    }

    /// <summary>A list or an object of the calculation's own; left out when there is none.</summary>
    public Gives With(string name, JsonNode? node)
    {
        if (node is not null)
            Json.Add(name, node);
        return this;
    }

    /// <summary>A quantity on its own, for lists.</summary>
    /// <exception cref="MalformedGiven">The value is not finite: numbers beyond all workshop sense went in.</exception>
    public static JsonObject Quantity(double value, string unit) =>
        double.IsFinite(value)
            ? new() { ["value"] = JsonValue.Create(value), ["unit"] = JsonValue.Create(unit) }
            : throw new MalformedGiven(
                "",
                "the result overflows",
                "numbers whose squares and quotients can still be written"
            );
}
