using Witnessmark.Bench.Photographs;
using Witnessmark.Keys;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Stock;
using Witnessmark.LogBooks;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>A shop by itself: all in its data folder.</summary>
/// <param name="data">The folder.</param>
/// <param name="ledger">The ledger in it.</param>
public sealed class FolderPlace(DataFolder data, ShopLedger ledger) : ShopPlace
{
    /// <inheritdoc />
    public override bool IsOfGroup => false;

    /// <inheritdoc />
    public override ShopLedger Ledger => ledger;

    /// <inheritdoc />
    public override DoorStore? DoorIfThere() => DoorStore.OpenIfThere(data.Path);

    /// <inheritdoc />
    public override DoorStore Door() => DoorStore.Open(data.Path);

    /// <inheritdoc />
    public override StockStore? StockIfThere() => StockStore.OpenIfThere(data.Path);

    /// <inheritdoc />
    public override StockStore Stock() => StockStore.Open(data.Path);

    /// <inheritdoc />
    public override ShopKey Key() => KeyFolder.ShopKey(data.Path);

    /// <inheritdoc />
    public override LogBookShelf LogBooks { get; } = LogBookShelf.In(data.Path);

    /// <inheritdoc />
    public override byte[]? Photograph(string sha256) => PhotographFolder.Find(data, sha256);

    /// <inheritdoc />
    public override bool Put(StoredPicture photograph) => PhotographFolder.Put(data, photograph);
}
