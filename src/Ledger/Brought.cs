namespace Witnessmark.Ledger;

/// <summary>A batch that has been read: whoever brings it does that, not the one writer for whom all wait.</summary>
/// <param name="Device">Who sends.</param>
/// <param name="Epoch">In which epoch it is.</param>
/// <param name="Things">What came, in its order.</param>
internal sealed record Brought(string Device, int Epoch, IReadOnlyList<Arrived> Things)
{
    public static Brought By(Batch batch) =>
        new(
            batch.Device,
            batch.Epoch,
            [.. batch.Entries.Select(json => Arrived.Read(json, batch.Device, batch.Epoch).UnlessOf(batch.PutAway))]
        );
}
