using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>A figure as somebody wrote it down, not yet read: the texts that stand behind the keys of its table.</summary>
/// <param name="Key"><c>chain.slack</c>.</param>
/// <param name="Demand"><c>range</c>, <c>min</c>, <c>max</c>, <c>target</c>, <c>torque</c> or <c>amount</c>.</param>
/// <param name="Printed"><c>13 to 32 mm</c>.</param>
/// <param name="Origin"><c>maker: handbook p. 87</c>.</param>
public sealed record FigureDraft(string Key, string Demand, string Printed, string Origin)
{
    /// <summary>The tolerance of a target or a torque, or null.</summary>
    public string? Tolerance { get; init; }

    /// <summary>The unit of numbers printed without one, or null.</summary>
    public string? Unit { get; init; }

    /// <summary>The same in another unit as printed beside it, or null.</summary>
    public string? Also { get; init; }

    /// <summary>Conditions, or null.</summary>
    public string? When { get; init; }

    /// <summary>Thread and property class of the bolt that a torque is for, or null.</summary>
    public string? Bolt { get; init; }

    /// <summary>The demands that a figure can make.</summary>
    public static IReadOnlyList<string> Demands { get; } = [.. FigureTable.Kinds.Select(k => k.Word)];

    /// <summary>The draft that would give this figure again.</summary>
    public static FigureDraft Of(Figure figure)
    {
        var printed = figure.AsPrinted.Split(" ± ");
        return new(figure.Key, FigureTable.Word(figure.Kind), printed[0], figure.Origin.Text)
        {
            Tolerance = printed.Length > 1 ? printed[1] : null,
            Unit = figure.BareUnit?.Symbol,
            Also = figure.Also,
            When = figure.When,
            Bolt = figure.Bolt?.ToString(),
        };
    }

    /// <summary>Reads it as a sheet would.</summary>
    /// <param name="documents">Names of the documents that an origin may name.</param>
    /// <returns>The figure, or why it is none: all that is wrong with it, and what would be right.</returns>
    public (Figure? Figure, Sentence? Why) Read(IReadOnlyCollection<string> documents)
    {
        if (!Demands.Contains(Demand))
            return (null, (Sentence)$"\"{Demand}\" is no demand; right would be one of {string.Join(", ", Demands)}");
        var mistakes = new Mistakes();
        var table = TomlFile.Read(new("figure", Toml()), mistakes).Root.Table("figures").Table(Key);
        var figure = FigureTable.Read(Key, table, documents);
        return mistakes.Count == 0
            ? (figure, null)
            : (null, Sentence.List(mistakes.Sorted().Select(WrittenMistake.Of), "; "));
    }

    /// <summary>As a table of a sheet.</summary>
    internal string Toml() =>
        string.Join(
            '\n',
            [$"[figures.{TomlQuote.Of(Key)}]", .. Lines().Select(l => $"{l.Key} = {TomlQuote.Of(l.Text!)}")]
        );

    private IEnumerable<(string Key, string? Text)> Lines() =>
        new[]
        {
            (Demand, Printed),
            ("tolerance", Tolerance),
            ("unit", Unit),
            ("also", Also),
            ("when", When),
            ("bolt", Bolt),
            ("origin", Origin),
        }.Where(l => !string.IsNullOrWhiteSpace(l.Item2));
}
