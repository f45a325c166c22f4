using System.Globalization;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>The names of geometry and facts that a sheet may give; corrections ask for them by these names.</summary>
public static class MachineFacts
{
    /// <summary>Quantities by name, with what they measure.</summary>
    public static readonly IReadOnlyDictionary<string, Dimension> Geometry = new Dictionary<string, Dimension>
    {
        ["centre-distance"] = Dimension.Length, // axle to front sprocket
        ["chain-pitch"] = Dimension.Length,
        ["adjuster-distance"] = Dimension.Length, // left adjuster to right
        ["chain-plane-offset"] = Dimension.Length, // from the middle, to the left positive
        ["tyre-diameter"] = Dimension.Length,
        ["wheelbase"] = Dimension.Length,
        ["thread-pitch"] = Dimension.Length, // of the chain adjusters
        ["swingarm"] = Dimension.Length,
        ["pivot-to-front-sprocket"] = Dimension.Length,
        ["inline-angle"] = Dimension.Angle,
        ["bench-angle"] = Dimension.Angle,
        ["droop-angle"] = Dimension.Angle,
        ["bump-angle"] = Dimension.Angle,
        ["rake"] = Dimension.Angle,
        ["fork-offset"] = Dimension.Length,
        ["wheel-radius"] = Dimension.Length,
    };

    /// <summary>Counts by name.</summary>
    public static readonly IReadOnlyList<string> Counts =
    [
        "front-teeth",
        "rear-teeth",
        "chain-links",
        "flats-per-turn",
    ];

    /// <summary>Truths by name.</summary>
    public static readonly IReadOnlyList<string> Truths = ["axle-reading-grows-rearward"];

    /// <summary>What kind of machine it is and how it is built, by name with the words allowed; they decide which points it has.</summary>
    public static readonly IReadOnlyDictionary<string, IReadOnlyList<string>> Traits = new Dictionary<
        string,
        IReadOnlyList<string>
    >
    {
        ["kind"] = ["motorcycle", "quad"],
        ["wheels"] = ["spoked", "cast"],
        ["front-brake"] = ["disc", "drum"],
        ["rear-brake"] = ["disc", "drum"],
        ["clutch"] = ["cable", "hydraulic", "automatic"],
        ["throttle"] = ["cable", "electronic"],
        ["fuel"] = ["injection", "carburettor"],
        ["cooled"] = ["liquid", "air"],
        ["valves"] = ["shims", "screws", "hydraulic"],
        ["battery"] = ["sealed", "filled"],
    };

    /// <summary>What a machine has or has not, true or false by name; it decides on points likewise.</summary>
    public static readonly IReadOnlyList<string> Fitted = ["abs", "tether", "winch"];

    /// <summary>The kind of a machine whose sheet names none.</summary>
    public const string UsualKind = "motorcycle";

    // these have a side or a direction; every other length is above zero
    private static readonly string[] Signed = ["chain-plane-offset", "fork-offset"];

    internal static Dictionary<string, Written> ReadGeometry(TomlTable? table)
    {
        Dictionary<string, Written> read = [];
        foreach (var (name, dimension) in Geometry)
            if (table?.QuantityOrNothing(name, dimension) is { } quantity)
            {
                if (dimension == Dimension.Length && quantity.Value <= 0 && !Signed.Contains(name))
                    table.Wrong(name, $"\"{quantity}\"", "a length above zero");
                read[name] = quantity;
            }
        table?.NoOtherKeys();
        return read;
    }

    internal static Dictionary<string, string> ReadFacts(TomlTable? table)
    {
        Dictionary<string, string> read = [];
        foreach (var name in Counts)
            if (table?.WholeOrNothing(name, 1, 1000) is { } count)
                read[name] = count.ToString(CultureInfo.InvariantCulture);
        foreach (var name in Truths)
            if (table?.TruthOrNothing(name) is { } truth)
                read[name] = truth ? "true" : "false";
        foreach (var (name, word) in TraitsIn(table))
            read[name] = word;
        table?.NoOtherKeys();
        return read;
    }

    /// <summary>What a machine of the shop has otherwise than its sheet says: a winch fitted later.</summary>
    internal static Dictionary<string, string> ReadTraits(TomlTable? table)
    {
        var read = TraitsIn(table);
        table?.NoOtherKeys();
        return read;
    }

    private static Dictionary<string, string> TraitsIn(TomlTable? table)
    {
        Dictionary<string, string> read = [];
        foreach (var (name, words) in Traits)
            if (table?.WordOrNothing(name, words) is { } word)
                read[name] = word;
        foreach (var name in Fitted)
            if (table?.TruthOrNothing(name) is { } truth)
                read[name] = truth ? "true" : "false";
        return read;
    }
}
