using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Machines;

/// <summary>What stands between a torque wrench and the nut and changes its setting: a crow-foot, a pin spanner.</summary>
/// <param name="Id"><c>crow-foot-32</c>.</param>
/// <param name="Name">As it is called.</param>
/// <param name="Extension">From the drive square to the nut.</param>
/// <param name="Angle">Between it and the wrench: 0 straight on, 90° sideways.</param>
/// <param name="Points">Points that the shop tightens with it.</param>
public sealed record WrenchAdapter(string Id, string Name, Length Extension, Angle Angle, IReadOnlyList<string> Points);

/// <summary>Reads one table <c>[adapters.NAME]</c>.</summary>
internal static class AdapterTable
{
    public static WrenchAdapter Read(string id, TomlTable table)
    {
        if (!table.Has("extension"))
            table.Mistakes.Add(table.Place, "\"extension\" is missing", "extension = \"60 mm\", drive square to nut");
        var angle = table.QuantityOrNothing("angle", Dimension.Angle);
        if (angle is { } given && Math.Abs(given.Base) > Math.PI)
            table.Wrong("angle", $"\"{given}\"", "an angle up to 180 deg: 0 straight on, 90 deg sideways");
        var adapter = new WrenchAdapter(
            id,
            table.Text("name"),
            Length(table, "extension") ?? default,
            new(angle?.Base ?? 0),
            table.SomeTexts("points")
        );
        table.NoOtherKeys();
        return adapter;
    }

    /// <summary>A length above zero, or null when the key is missing.</summary>
    public static Length? Length(TomlTable table, string key)
    {
        if (table.QuantityOrNothing(key, Dimension.Length) is not { } length)
            return null;
        if (length.Value <= 0)
            table.Wrong(key, $"\"{length}\"", "a length above zero");
        return new(length.Base);
    }
}
