using System.Globalization;
using Witnessmark.Bench.Stock;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Shelf;

/// <summary>Words of the shelf.</summary>
internal static class ShelfWords
{
    public const string Title = "Shelf";
    public const string Find = "Find on the shelf";
    public const string FindHint = "a name, a place, what it is for";
    public const string Nothing = "Nothing on the shelf has that in it.";
    public const string None = "The shop's file names no stock.";
    public const string ToOrder = "To order";
    public const string OnShelf = "What there is";
    public const string NoSuchItem = "The shop's file has no such thing on the shelf";
    public const string NotLookedUp = "What there is was not looked up";
    public const string NotTold = "Nothing was recorded.";
    public const string Looking = "Looking on the shelf.";
    public const string What = "What happened?";
    public const string Size = "Which size?";
    public const string MeasuredSize = "Measured size";
    public const string Batch = "What its maker printed on it (if you want it told apart)";
    public const string Job = "For which job?";
    public const string Save = "Record it";
    public const string Recorded = "Recorded.";
    public const string NoRecord = "Nothing of it is on record yet.";
    public const string CountIt = "count it";

    /// <summary>What can happen here, as the shop calls it and as people do.</summary>
    public static readonly IReadOnlyList<(string Kind, string Words)> Kinds =
    [
        ("receive", "It came"),
        ("count", "I counted"),
        ("use", "Used on a job"),
    ];

    public static string Amount(string kind) =>
        kind switch
        {
            "count" => "So much is there",
            "use" => "Used",
            _ => "Came",
        };

    public static string Said(decimal amount, StockItem item) =>
        amount.ToString("0.######", CultureInfo.InvariantCulture) + (item.Counted is { } unit ? $" {unit}" : "");

    /// <summary>All of an item in short.</summary>
    public static string Short(StockItem item, IReadOnlyList<StockLineReply>? lines) =>
        lines is null or { Count: 0 } ? "–"
        : lines.Any(l => l.Warning is not null) ? CountIt
        : Said(lines.Sum(l => l.There), item);

    public static string Line(StockLineReply line, StockItem item)
    {
        var what = string.Join(", ", new[] { line.Size, line.Batch }.OfType<string>());
        return $"{(what.Length > 0 ? $"{what}: " : "")}{Said(line.There, item)} there"
            + (line.Kept > 0 ? $", {Said(line.Kept, item)} kept back for jobs" : "");
    }

    public static string Lead(int? days) =>
        days switch
        {
            null => "how long an order takes nobody said",
            1 => "1 day to get",
            _ => $"{days} days to get",
        };

    public static string Missing(bool kind, bool size, bool job, bool amount) =>
        kind ? "Say what happened."
        : size ? "Say which size."
        : job ? "Say for which job."
        : amount ? "How many?"
        : "";
}
