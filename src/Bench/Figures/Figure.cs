using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>What kind of demand a figure is.</summary>
public enum FigureKind
{
    /// <summary>From one value to another.</summary>
    Range,

    /// <summary>At least.</summary>
    Min,

    /// <summary>At most.</summary>
    Max,

    /// <summary>A target with a tolerance either side.</summary>
    Target,

    /// <summary>A tightening torque, with a tolerance where the maker gives one.</summary>
    Torque,

    /// <summary>A capacity or another amount that judges nothing by itself.</summary>
    Amount,
}

/// <summary>A number that a maker, a law or common practice demands.</summary>
/// <param name="Key"><c>chain.slack</c>.</param>
/// <param name="Kind">What kind of demand.</param>
/// <param name="Unit">The unit it is printed in; every number below is in it.</param>
/// <param name="Min">Lower end; the target less its tolerance; null when open.</param>
/// <param name="Max">Upper end; the target with its tolerance; null when open.</param>
/// <param name="Value">The target, torque or amount; null for a limit.</param>
/// <param name="AsPrinted">As it stands in the sheet: <c>13 to 32 mm</c>.</param>
/// <param name="Also">The same in another unit as printed beside it, or null.</param>
/// <param name="When">Conditions it holds under, or null.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record Figure(
    string Key,
    FigureKind Kind,
    Unit Unit,
    double? Min,
    double? Max,
    double? Value,
    string AsPrinted,
    string? Also,
    string? When,
    Origin Origin
)
{
    /// <summary>The bolt that a torque is for, or null.</summary>
    public FigureBolt? Bolt { get; init; }

    /// <summary>The unit given beside numbers that were printed without one, or null.</summary>
    public Unit? BareUnit { get; init; }

    /// <summary>In one line as it stands in the sheet: <c>range 13 to 32 mm, maker: handbook p. 87</c>.</summary>
    public string InSheet =>
        $"{FigureTable.Word(Kind)} {AsPrinted}{(Also is null ? "" : $" ({Also})")}{(When is null ? "" : $", {When}")}, {Origin.Text}";

    /// <summary>The limit that it sets, in its unit; null when it sets none.</summary>
    public Limit? Limit => Min is null && Max is null ? null : new Limit(Min, Max);

    /// <summary>Short, for tables: <c>13 – 32 mm</c>, <c>≥ 1.5 mm</c>, <c>110 N·m</c>.</summary>
    public Sentence Short =>
        Kind switch
        {
            FigureKind.Range => Numerals.Between(Min ?? 0, Max ?? 0, Unit, Digits, (min, max) => $"{min} – {max}"),
            FigureKind.Min => $"≥ {With(Min, RoundedTo.Above)}",
            FigureKind.Max => $"≤ {With(Max, RoundedTo.Below)}",
            FigureKind.Target => Numerals.PlusMinus(Value ?? 0, (Max - Value) ?? 0, Unit, Digits),
            _ => With(Value),
        };

    // as many as a sheet prints; the figure is shown as it stands there
    private const int Digits = 6;

    private Sentence With(double? value, RoundedTo rounded = RoundedTo.Nearest) =>
        Numerals.With(value ?? 0, Unit, Digits, rounded);
}
