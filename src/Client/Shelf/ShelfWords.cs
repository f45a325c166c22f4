using Witnessmark.Bench.Stock;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Shelf;

/// <summary>Words of the shelf.</summary>
internal static class ShelfWords
{
    public static string Title => Say($"Shelf");
    public static string Find => Say($"Find on the shelf");
    public static string FindHint => Say($"a name, a place, what it is for");
    public static string Nothing => Say($"Nothing on the shelf has that in it.");
    public static string None => Say($"The shop's file names no stock.");
    public static string ToOrder => Say($"To order");
    public static string OnShelf => Say($"What there is");
    public static string NoSuchItem => Say($"The shop's file has no such thing on the shelf");
    public static string NotLookedUp => Say($"What there is was not looked up");
    public static string NotTold => Say($"Nothing was recorded.");
    public static string Looking => Say($"Looking on the shelf.");
    public static string What => Say($"What happened?");
    public static string Size => Say($"Which size?");
    public static string MeasuredSize => Say($"Measured size");
    public static string Batch => Say($"What its maker printed on it (if you want it told apart)");
    public static string Job => Say($"For which job?");
    public static string Save => Say($"Record it");
    public static string Recorded => Say($"Recorded.");
    public static string NoRecord => Say($"Nothing of it is on record yet.");
    public static string CountIt => Say($"count it");

    /// <summary>What can happen here, as the shop calls it and as people do.</summary>
    public static IReadOnlyList<(string Kind, string Words)> Kinds =>
        [("receive", Say($"It came")), ("count", Say($"I counted")), ("use", Say($"Used on a job"))];

    public static string Amount(string kind) =>
        kind switch
        {
            "count" => Say($"So much is there"),
            "use" => Say($"Used"),
            _ => Say($"Came"),
        };

    public static string Said(decimal amount, StockItem item) =>
        Say($"{amount:0.######}{(item.Counted is { } unit ? $" {unit}" : "")}");

    /// <summary>All of an item in short.</summary>
    public static string Short(StockItem item, IReadOnlyList<StockLineReply>? lines) =>
        lines is null or { Count: 0 } ? "–"
        : lines.Any(l => l.Warning is not null) ? CountIt
        : Said(lines.Sum(l => l.There), item);

    public static string Line(StockLineReply line, StockItem item)
    {
        var what = string.Join(", ", new[] { line.Size, line.Batch }.OfType<string>());
        return Say($"{(what.Length > 0 ? $"{what}: " : "")}{Said(line.There, item)} there")
            + (line.Kept > 0 ? Say($", {Said(line.Kept, item)} kept back for jobs") : "");
    }

    public static string Lead(int? days) =>
        days switch
        {
            null => Say($"how long an order takes nobody said"),
            { } some => Say(Sentence.Count(some, $"1 day to get", $"{some} days to get")),
        };

    public static string Missing(bool kind, bool size, bool job, bool amount) =>
        kind ? Say($"Say what happened.")
        : size ? Say($"Say which size.")
        : job ? Say($"Say for which job.")
        : amount ? Say($"How many?")
        : "";
}
