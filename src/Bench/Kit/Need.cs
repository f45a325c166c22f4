using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Kit;

/// <summary>How much of one thing all points together use up.</summary>
/// <param name="What">As the bench book calls it.</param>
/// <param name="Points">Ids of the points.</param>
/// <param name="Pieces">How many; 0 when none was counted.</param>
/// <param name="Amount">How much; null when none was measured.</param>
/// <param name="Known">Whether the two are all of it.</param>
/// <param name="Notes">What is missing.</param>
internal sealed record Need(
    string What,
    IReadOnlyList<string> Points,
    int Pieces,
    Written? Amount,
    bool Known,
    IReadOnlyList<Sentence> Notes
)
{
    private const double Hundredths = 100;

    /// <summary>How much in words; what is not known is said, never zero.</summary>
    public Sentence Quantity
    {
        get
        {
            if (Pieces == 0 && Amount is null)
                return Sentence.Of(KitLine.Unknown);
            Sentence said =
                Amount is not { } amount ? (Sentence)$"{Pieces}"
                : Pieces == 0 ? Up(amount)
                : (Sentence)$"{Pieces} and {Up(amount)}";
            return Known ? said : (Sentence)$"{said}, and more that is unknown";
        }
    }

    /// <summary>Each thing once, in the order in which the points ask for it first.</summary>
    public static IEnumerable<Need> Of(IReadOnlyList<Point> points, FigureSheet sheet) =>
        points
            .SelectMany(p => p.Consumables, (point, consumable) => (point, consumable))
            .GroupBy(x => x.consumable.What)
            .Select(same =>
                Of(same.Key, [.. same.Select(x => x.point.Id)], [.. same.Select(x => x.consumable)], sheet)
            );

    /// <summary>Rounded up to hundredths: too little is worse than a little too much.</summary>
    private static Sentence Up(Written amount) =>
        $"{Math.Ceiling(amount.Value * Hundredths - 1e-6) / Hundredths:0.##} {amount.Unit}";

    private static Need Of(
        string what,
        IReadOnlyList<string> points,
        IReadOnlyList<Consumable> asked,
        FigureSheet sheet
    )
    {
        var need = new Need(what, points, 0, null, true, []);
        return asked.Aggregate(need, (sum, consumable) => sum.With(consumable, sheet));
    }

    private Need With(Consumable asked, FigureSheet sheet)
    {
        if (asked.Figure is { } key)
            return sheet.Figures.GetValueOrDefault(key) is { Value: > 0 and var value, Unit: var unit }
                ? WithAmount(new(value * asked.Times, unit))
                : Unknown($"The figure sheet has no amount \"{key}\".");
        if (asked.Amount is not { } text)
            return Unknown(null);
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            return this with { Pieces = Pieces + count * asked.Times };
        return Written.Read(text, out var written) is null
            ? WithAmount(written with { Value = written.Value * asked.Times })
            : Unknown(null);
    }

    private Need WithAmount(Written more) =>
        Amount is not { } sum ? this with { Amount = more }
        : sum.Unit.Dimension == more.Unit.Dimension
            ? this with
            {
                Amount = new(sum.Value + more.In(sum.Unit).Value, sum.Unit),
            }
        : Unknown($"{more} beside {sum} cannot be added.");

    private Need Unknown(Sentence? note) =>
        this with
        {
            Known = false,
            Notes = note is null || Notes.Contains(note) ? Notes : [.. Notes, note],
        };
}
