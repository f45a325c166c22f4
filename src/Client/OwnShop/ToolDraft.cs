using Witnessmark.Bench.Machines;
using Witnessmark.Bench.OwnShop;

namespace Witnessmark.Client.OwnShop;

/// <summary>One tool that can be ticked, with what may be different in another shop.</summary>
public sealed class ToolDraft
{
    // where most people read in inches: the unit that stands for another one, and how many decimals more it takes
    private static readonly Dictionary<string, (string Unit, int More)> Others = new()
    {
        ["mm"] = ("in", 2),
        ["km"] = ("mi", 0),
        ["kPa"] = ("psi", 1),
        ["N·m"] = ("lbf·ft", 0),
        ["L"] = ("US qt", 0),
    };

    private const int MostDecimals = 4;

    public string Id { get; set; } = "";
    public string Kind { get; set; } = "";
    public string Unit { get; set; } = "";
    public int Decimals { get; set; }
    public string? Replacing { get; set; }
    public string? CheckEvery { get; set; }

    /// <summary>Whether this shop has one.</summary>
    public bool Here { get; set; }
    public string Name { get; set; } = "";
    public string Resolution { get; set; } = "";
    public string Error { get; set; } = "";
    public string From { get; set; } = "";
    public string To { get; set; } = "";
    public string Lever { get; set; } = "";

    /// <summary>As a browser has days: <c>2026-03-31</c>.</summary>
    public string Checked { get; set; } = "";

    /// <summary>Whether it is ever calibrated.</summary>
    public bool IsChecked => CheckEvery is null && Kind != "level";

    public static ToolDraft Of(ShopInstrument tool) =>
        new()
        {
            Id = tool.Id,
            Name = Known(tool.Name),
            Kind = tool.Kind,
            Unit = $"{tool.Unit}",
            Decimals = tool.Decimals,
            Resolution = Amount(tool.Resolution, tool),
            Error =
                tool.Kind == "torque"
                    ? Digits($"{Number(tool.PermissibleError * 100)} %")
                    : Amount(tool.PermissibleError, tool),
            Replacing = tool.Replacing > 0 ? Amount(tool.Replacing, tool) : null,
            From = tool.Min is { } min ? Amount(min, tool) : "",
            To = tool.Max is { } max ? Amount(max, tool) : "",
            Lever = tool.Lever is { } lever ? Digits($"{Number(lever.Millimetres)} mm") : "",
            CheckEvery = tool.NeverChecked ? "never" : null,
            // belongs to the machine or to nearly every bench
            Here = tool.Kind == "level" || tool.NeverChecked || tool.Id == "steel-rule",
        };

    public NewInstrument Instrument(bool inches)
    {
        var (unit, more) = inches && Others.TryGetValue(Unit, out var other) ? other : (Unit, 0);
        return new(
            Id,
            Name.Trim(),
            Kind,
            unit,
            Stands(Resolution),
            Stands(Error),
            Math.Min(Decimals + more, MostDecimals)
        )
        {
            Replacing = Replacing is null ? null : Stands(Replacing),
            From = Amount(From),
            To = Amount(To),
            Lever = Amount(Lever),
            Checked = Given(Checked),
            CheckEvery = CheckEvery,
        };
    }

    // a comma is a decimal point to many hands; files have a point
    private static string Stands(string text) => text.Trim().Replace(',', '.');

    private static string? Amount(string text) => Given(Stands(text));

    private static string? Given(string text) => text.Trim() is { Length: > 0 } some ? some : null;

    private static string Amount(double amount, ShopInstrument tool) =>
        Digits($"{Number(amount)}{(tool.Kind == "level" ? "" : $" {tool.Unit}")}");

    private static string Number(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
