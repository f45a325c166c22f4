using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>The calculations that correct a point, and the settings that each takes from the workshop.</summary>
public static class CorrectionSettings
{
    /// <summary>Settings with what they measure, by calculation and name; null: true or false.</summary>
    public static readonly IReadOnlyDictionary<string, IReadOnlyDictionary<string, Dimension?>> All = new Dictionary<
        string,
        IReadOnlyDictionary<string, Dimension?>
    >
    {
        ["chain-adjustment"] = new Dictionary<string, Dimension?> { ["target"] = Dimension.Length },
        ["axle-alignment"] = new Dictionary<string, Dimension?>(),
        ["cable-free-play"] = new Dictionary<string, Dimension?> { ["target"] = Dimension.Length },
        ["torque-setting"] = new Dictionary<string, Dimension?>
        {
            ["shift-prior-mean"] = Dimension.Area,
            ["shift-prior-deviation"] = Dimension.Area,
            ["job-scatter"] = Dimension.Area,
        },
        ["oil-first-fill"] = new Dictionary<string, Dimension?>
        {
            ["retained"] = Dimension.Volume,
            ["retained-deviation"] = Dimension.Volume,
            ["capacity-deviation"] = Dimension.Volume,
            ["target-level"] = Dimension.Number,
            ["overfill-risk"] = Dimension.Number,
            ["filter-replaced"] = null,
        },
        ["oil-top-up"] = new Dictionary<string, Dimension?>
        {
            ["between-marks-deviation"] = Dimension.Volume,
            ["target-level"] = Dimension.Number,
            ["overfill-risk"] = Dimension.Number,
        },
    };

    /// <summary>Reads <c>[points.NAME.settings]</c> of a point that a calculation corrects.</summary>
    internal static Dictionary<string, string> Read(TomlTable? table, string? correction)
    {
        Dictionary<string, string> settings = [];
        if (table is null || (correction is not null && !All.ContainsKey(correction)))
            return settings; // of an unknown calculation nothing is known
        foreach (
            var (name, dimension) in All.GetValueOrDefault(correction ?? "") ?? new Dictionary<string, Dimension?>()
        )
            if (table.TextOrNothing(name) is { Length: > 0 } text)
            {
                settings[name] = text;
                Check(table, name, text, dimension);
            }
        table.NoOtherKeys();
        return settings;
    }

    private static void Check(TomlTable table, string name, string text, Dimension? dimension)
    {
        var right = dimension switch
        {
            null => "\"true\" or \"false\"",
            Dimension.Number => "a number from 0 to 1 in quotes, e.g. \"0.75\"",
            { } other => $"text with a unit, e.g. \"1 {UnitTable.Measuring(other).First()}\"",
        };
        if (!Fits(text, dimension))
            table.Wrong(name, $"\"{text}\"", $"{name} = {right}");
    }

    private static bool Fits(string text, Dimension? dimension)
    {
        if (dimension is null)
            return text is "true" or "false";
        if (dimension == Dimension.Number)
            return Written.Read(text + " 1", out var number) is null && number.Value is >= 0 and <= 1;
        return Written.Read(text, out var written) is null && written.Unit.Dimension == dimension;
    }
}
