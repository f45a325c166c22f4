using Witnessmark.Bench.Figures;
using Witnessmark.Client.Parts;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Figures;

/// <summary>A figure while it is being written down.</summary>
public sealed class FigureFields
{
    private const int MostDecimals = 4;

    /// <summary>The keypad's rules: no figure is printed finer.</summary>
    internal static KeyRules Rules { get; } = new(MostDecimals, "A figure", Minus: true);

    public string Key { get; set; } = "";
    public string Demand { get; private set; } = "";
    public string Unit { get; set; } = "";
    public OriginKind? Origin { get; set; }
    public string Document { get; set; } = "";
    public string Place { get; set; } = "";
    public string When { get; set; } = "";
    public string Also { get; set; } = "";
    public string Why { get; set; } = "";

    /// <summary>The boxes of this demand.</summary>
    public IReadOnlyList<Number> Numbers { get; private set; } = [];

    /// <summary>Whether the origin names a place.</summary>
    public bool PlaceNeeded => Origin is OriginKind.Maker or OriginKind.Law or OriginKind.Standard;

    /// <summary>One number of the figure.</summary>
    public sealed class Number(string label, bool needed)
    {
        public string Label => label;
        public bool Needed => needed;
        public string Text { get; set; } = "";
    }

    /// <summary>What stands in the sheet now, to be changed.</summary>
    public static FigureFields Of(Figure figure)
    {
        var fields = new FigureFields
        {
            Key = figure.Key,
            Unit = figure.Unit.Symbol,
            Origin = figure.Origin.Kind,
            When = figure.When ?? "",
            Also = figure.Also ?? "",
        };
        fields.Choose(FigureDraft.Of(figure).Demand);
        fields.Fill(figure);
        (fields.Document, fields.Place) =
            figure.Origin.Kind == OriginKind.Maker && figure.Origin.Place.IndexOf(' ') is > 0 and var space
                ? (figure.Origin.Place[..space], figure.Origin.Place[(space + 1)..])
                : ("", figure.Origin.Place);
        return fields;
    }

    /// <summary>Chooses the demand and with it the boxes; what was typed into boxes of the same name stays.</summary>
    public void Choose(string demand)
    {
        var typed = Numbers.ToDictionary(n => n.Label, n => n.Text);
        Demand = demand;
        Numbers = demand switch
        {
            "range" => [new(FiguresWords.From, true), new(FiguresWords.To, true)],
            "target" => [new(FiguresWords.Value, true), new(FiguresWords.Tolerance, true)],
            "torque" => [new(FiguresWords.Value, true), new(FiguresWords.Tolerance, false)],
            _ => [new(FiguresWords.Value, true)],
        };
        foreach (var number in Numbers)
            number.Text = typed.GetValueOrDefault(number.Label, "");
    }

    /// <summary>The draft that these fields say.</summary>
    public FigureDraft Draft()
    {
        var unit = UnitTable.Named(Unit);
        var bare = unit.Dimension == Dimension.Number;
        string With(string number) => bare ? number : $"{number} {Unit}";
        var printed = Demand == "range" ? With($"{Numbers[0].Text} to {Numbers[1].Text}") : With(Numbers[0].Text);
        return new(Key.Trim(), Demand, printed, OriginText)
        {
            Tolerance =
                Numbers is [_, { Text.Length: > 0 } tolerance] && tolerance.Label == FiguresWords.Tolerance
                    ? With(tolerance.Text)
                    : null,
            Unit = bare ? Unit : null,
            When = Said(When),
            Also = Said(Also),
        };
    }

    private string OriginText =>
        Origin switch
        {
            OriginKind.Maker => $"maker: {Document} {Place.Trim()}",
            OriginKind.Law => $"law: {Place.Trim()}",
            OriginKind.Standard => $"standard: {Place.Trim()}",
            OriginKind.Shop => "shop",
            _ => "common practice",
        };

    private static string? Said(string text) => text.Trim().Length == 0 ? null : text.Trim();

    private void Fill(Figure figure)
    {
        var texts =
            FigureDraft.Of(figure) is var draft && Demand == "range"
                ? [.. draft.Printed.Split(" to ")]
                : new List<string> { draft.Printed, draft.Tolerance ?? "" };
        foreach (var (number, text) in Numbers.Zip(texts))
            number.Text = string.Concat(text.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-'));
    }
}
