using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning;

/// <summary>One thing to get ready, for several points together.</summary>
/// <param name="Item">What.</param>
/// <param name="Quantity">How much of it: <c>2</c>, <c>3.2 L</c>, <c>as needed</c>.</param>
/// <param name="For">Ids of the points that use it.</param>
public sealed record KitItem(string Item, string Quantity, IReadOnlyList<string> For);

/// <summary>What the points of a plan use up: things of one name together.</summary>
public static class Kit
{
    /// <summary>Where the book gives no amount.</summary>
    public const string AsNeeded = "as needed";

    /// <summary>In the order in which the points first ask for them.</summary>
    public static IReadOnlyList<KitItem> Of(IEnumerable<Point> points, FigureSheet sheet) =>
        [
            .. points
                .SelectMany(p => p.Consumables, (point, consumable) => (point, consumable))
                .GroupBy(c => c.consumable.What)
                .Select(same => new KitItem(
                    same.Key,
                    Sum(same.Select(c => Amount(c.consumable, sheet))),
                    [.. same.Select(c => c.point.Id)]
                )),
        ];

    private static Written? Amount(Consumable consumable, FigureSheet sheet)
    {
        if (consumable.Figure is { } key)
            return sheet.Figures.GetValueOrDefault(key) is { Value: { } value } figure ? new(value, figure.Unit) : null;
        if (consumable.Amount is not { } text)
            return null;
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
                ? new(count, UnitTable.Named("1"))
            : Written.Read(text, out var written) is null ? written
            : null;
    }

    // each unit of its own: a litre of one thing and two tins of it are not three of anything
    private static string Sum(IEnumerable<Written?> amounts)
    {
        var sums = amounts
            .OfType<Written>()
            .GroupBy(a => a.Unit.Dimension)
            .Select(g => Numerals.With(g.Sum(a => g.First().Unit.FromBase(a.Base)), g.First().Unit, 4));
        return string.Join(" and ", sums) is { Length: > 0 } all ? all : AsNeeded;
    }
}
