namespace Witnessmark.Client.Device;

/// <summary>What is on the shop's shelf.</summary>
internal sealed record StockReply(IReadOnlyList<StockItemReply> Items, IReadOnlyList<ToOrderReply> ToOrder);

internal sealed record StockItemReply(string Item, IReadOnlyList<StockLineReply> Lines);

internal sealed record StockLineReply(
    string? Size,
    string? Batch,
    decimal There,
    decimal Kept,
    decimal Free,
    string? Warning
);

internal sealed record ToOrderReply(string Item, string Name, string Free, int? LeadDays);

/// <summary>What happened on the shelf, on its way to the shop.</summary>
internal sealed record MoveRequest(
    string Id,
    string Kind,
    string Item,
    string Amount,
    string By,
    string? Size,
    string? Batch,
    string? Job
);

/// <summary>What there is after it.</summary>
internal sealed record MoveReply(StockLineReply Line);
