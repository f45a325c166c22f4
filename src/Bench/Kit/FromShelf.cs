using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Kit;

/// <summary>Holds what is needed against what is on the shelf: which pieces and bottles to take, and what is too little.</summary>
internal static class FromShelf
{
    // more than the largest need takes of the smallest bottle
    private const decimal MostBottles = 200_000;

    public static KitLine Line(
        Need need,
        FigureSheet sheet,
        Workshop shop,
        Shelf? stock,
        string? job,
        List<Shortage> shortages
    )
    {
        List<Sentence> notes = [.. need.Notes];
        if (stock is not null)
        {
            var items = shop.Stock.Values.Where(i => i.ServesFor(need.What, sheet.Id)).ToArray();
            var found = items.Select(i => Of(need, i, stock, job)).ToArray();
            if (found.Length == 0)
                notes.Add($"Not kept on the shelf.");
            else
            {
                // what there is enough of goes first; then as the shop wrote its shelf down
                var best = found.FirstOrDefault(f => f.Short is null) ?? found[0];
                notes.Add(best.Take);
                if (best.Short is { } shortage)
                    shortages.Add(shortage);
            }
        }
        return new(KitKind.Consumable, Sentence.Of(need.What), need.Quantity, need.Points, Sentence.List(notes, " "));
    }

    private static Found Of(Need need, StockItem item, Shelf stock, string? job)
    {
        var sizes = stock
            .Of(item.Id)
            .GroupBy(l => l.What.Size)
            .ToDictionary(g => g.Key ?? "", g => g.Sum(l => l.FreeFor(job)));
        var there = sizes.Values.Sum();
        if (there == 0) // not enough, however little is needed
            return Lacks(need, item, sizes.Count == 0 ? null : item.InWords(there));
        if (need is { Pieces: > 0, Amount: null } && item.Counted is null)
            return there >= need.Pieces
                ? new($"Take {need.Pieces} of {item.Name}, {Where(item)}{item.InWords(there)} there.", null)
                : Lacks(need, item, item.InWords(there));
        if (need is { Amount: { } amount, Pieces: 0 })
            return item.Counted is { } unit && unit.Dimension == amount.Unit.Dimension
                    ? Loose(need, amount, item, there)
                : item.Sizes.Count > 0
                && amount.Unit.Dimension == Dimension.Volume
                && item.Sizes[0].Unit.Dimension == Dimension.Volume
                    ? InBottles(need, amount, item, sizes)
                : Cannot(item, there);
        return Cannot(item, there);
    }

    private static Found Loose(Need need, Written amount, StockItem item, decimal there) =>
        (double)there >= amount.In(item.Counted!).Value - 1e-9
            ? new($"{item.Name}, {Where(item)}{item.InWords(there)} there.", null)
            : Lacks(need, item, item.InWords(there));

    private static Found InBottles(Need need, Written amount, StockItem item, Dictionary<string, decimal> there)
    {
        if (amount.Base > BottleChoice.MostLitres)
            return Cannot(item, there.Values.Sum());
        var sizes = item
            .Sizes.Select(s => new BottleSize(s.Base, (int)Math.Min(MostBottles, there.GetValueOrDefault($"{s}"))))
            .ToArray();
        if (BottleChoice.For(amount.Base, sizes) is not { } bottles)
            return Lacks(need, item, Litres(sizes.Sum(s => s.Litres * s.There)));
        var taken = item
            .Sizes.Zip(bottles.Taken)
            .Where(x => x.Second > 0)
            .Select(x => (Sentence)$"{x.Second} × {x.First}");
        return new(
            $"Take {And(taken)} of {item.Name}, {Where(item)}{Litres(bottles.Litres - amount.Base)} is left over.",
            null
        );
    }

    private static Found Cannot(StockItem item, decimal there) =>
        new($"{item.Name}, {Where(item)}{item.InWords(there)} there: look whether it is enough.", null);

    private static Found Lacks(Need need, StockItem item, Sentence? there)
    {
        Sentence only = there is null ? (Sentence)$"none on record" : (Sentence)$"only {there} there";
        Sentence order = item.LeadDays is { } days
            ? Sentence.Count(days, $"Order it: {days} day.", $"Order it: {days} days.")
            : (Sentence)$"Order it; how long that takes nobody said.";
        return new(
            $"{item.Name}, {Where(item)}{only}.",
            new(
                Sentence.Of(item.Name),
                need.Quantity,
                there ?? $"none on record",
                need.Points,
                item.LeadDays,
                $"{only.Begun()}. {order}"
            )
        );
    }

    private static Sentence And(IEnumerable<Sentence> taken) => taken.Aggregate((all, next) => $"{all} and {next}");

    private static Sentence Litres(double litres) => $"{Math.Floor(litres * 100 + 1e-6) / 100:0.##} L";

    private static string Where(StockItem item) => item.Place is { } place ? $"{place}, " : "";

    private sealed record Found(Sentence Take, Shortage? Short);
}
