using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>Reads one table <c>[figures."chain.slack"]</c>.</summary>
internal static class FigureTable
{
    /// <summary>The word that each kind of demand goes by.</summary>
    internal static readonly (string Word, FigureKind Kind)[] Kinds =
    [
        ("range", FigureKind.Range),
        ("min", FigureKind.Min),
        ("max", FigureKind.Max),
        ("target", FigureKind.Target),
        ("torque", FigureKind.Torque),
        ("amount", FigureKind.Amount),
    ];

    /// <summary>The word of a kind: <c>range</c>.</summary>
    public static string Word(FigureKind kind) => Kinds.First(k => k.Kind == kind).Word;

    /// <summary>The figure; null when its number cannot be taken, which is noted.</summary>
    public static Figure? Read(string key, TomlTable table, IReadOnlyCollection<string> documents)
    {
        var also = table.TextOrNothing("also");
        var when = table.TextOrNothing("when");
        var bare = table.UnitOrNothing("unit");
        var origin = OriginText.Read(table, documents);
        var bolt = Bolt(table);
        var figure =
            Demand(table) is var (word, kind) && Printed(table, word, kind, bare) is { } printed
                ? Made(key, table, word, kind, printed, bare, also) is { } made
                    ? made with
                    {
                        When = when,
                        Origin = origin,
                        BareUnit = bare,
                        Bolt = bolt,
                    }
                    : null
                : null;
        table.NoOtherKeys();
        return figure;
    }

    // only a torque has a bolt; beside any other demand the key is unknown
    private static FigureBolt? Bolt(TomlTable table) => table.Has("torque") ? FigureBolt.Read(table) : null;

    private static (string, FigureKind)? Demand(TomlTable table)
    {
        var given = Kinds.Where(k => table.TextOrNothing(k.Word) is not null).ToArray();
        if (given.Length == 1)
            return given[0];
        var all = string.Join(", ", Kinds.Select(k => k.Word));
        if (given.Length > 1)
            table.Mistakes.Add(
                table.KeyAt(given[1].Word),
                $"\"{given[1].Word}\" beside \"{given[0].Word}\"",
                $"one of {all} only (two ends are a range: range = \"13 to 32 mm\")"
            );
        else if (!Kinds.Any(k => table.Has(k.Word)))
            table.Mistakes.Add(
                table.Place,
                "a figure without a number",
                $"one of {all}, such as range = \"13 to 32 mm\""
            );
        return null;
    }

    private static PrintedQuantity? Printed(TomlTable table, string word, FigureKind kind, Unit? bare)
    {
        var text = table.Text(word);
        if (text.Length == 0)
            return null; // noted already
        var example = kind switch
        {
            FigureKind.Range => "13 to 32 mm",
            FigureKind.Torque => "110 N·m",
            _ => "1.5 mm",
        };
        if (PrintedQuantity.Read(text, kind == FigureKind.Range ? 2 : 1, bare, out var printed) is { } why)
            table.Wrong(word, $"\"{text}\": {why}", $"{word} = text such as \"{example}\"");
        else if (kind == FigureKind.Torque && printed!.Unit.Dimension != Dimension.Torque)
            table.Wrong(word, $"\"{text}\" is not a torque", $"{word} = text such as \"{example}\"");
        else if (kind == FigureKind.Range && printed!.Numbers[0].Value >= printed.Numbers[1].Value)
            table.Wrong(word, $"\"{text}\": the ends are swapped or equal", "the smaller one first");
        else
            return printed;
        return null;
    }

    private static Figure? Made(
        string key,
        TomlTable table,
        string word,
        FigureKind kind,
        PrintedQuantity printed,
        Unit? bare,
        string? also
    )
    {
        AsPrinted.Check(table, printed, also);
        var first = printed.Numbers[0].Value;
        var width = Tolerance(table, kind, printed, bare);
        if (kind == FigureKind.Target && width is null)
            return null;
        var (min, max, value) = kind switch
        {
            FigureKind.Range => (first, printed.Numbers[1].Value, (double?)null),
            FigureKind.Min => (first, null, null),
            FigureKind.Max => ((double?)null, (double?)first, (double?)null),
            _ => (first - width, first + width, first),
        };
        var text = table.Text(word).Trim() + (width is null ? "" : $" ± {table.Text("tolerance").Trim()}");
        return new(key, kind, printed.Unit, min, max, value, text, also, null, new(OriginKind.CommonPractice, ""));
    }

    /// <summary>Half-width in the unit of the figure, or null when there is none or it cannot be taken.</summary>
    private static double? Tolerance(TomlTable table, FigureKind kind, PrintedQuantity printed, Unit? bare)
    {
        if (kind is not (FigureKind.Target or FigureKind.Torque))
            return null; // a tolerance there is an unknown key
        if (kind == FigureKind.Torque && !table.Has("tolerance"))
        {
            _ = table.TextOrNothing("tolerance");
            return null;
        }
        var text = table.Text("tolerance");
        if (text.Length == 0)
            return null;
        const string right = "tolerance = text such as \"15 kPa\" or \"10 %\", more than zero";
        if (PrintedQuantity.Read(text, 1, bare, out var tolerance) is { } why)
            table.Wrong("tolerance", $"\"{text}\": {why}", right);
        else if (tolerance!.Numbers[0].Value <= 0)
            table.Wrong("tolerance", $"\"{text}\"", right);
        else if (tolerance.Unit.Dimension == printed.Unit.Dimension)
            return tolerance.Numbers[0].Value * tolerance.Unit.Factor / printed.Unit.Factor; // a difference has no offset
        else if (tolerance.Unit.Symbol == "%")
            return Math.Abs(printed.Numbers[0].Value) * tolerance.Numbers[0].Value / 100;
        else
            table.Wrong("tolerance", $"\"{text}\" measures something else than {printed.Unit}", right);
        return null;
    }
}
