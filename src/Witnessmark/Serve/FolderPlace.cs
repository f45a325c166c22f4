using Witnessmark.Bench.Photographs;
using Witnessmark.Keys;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Ledger.Stock;
using Witnessmark.LogBooks;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>A shop by itself: all in its data folder.</summary>
/// <param name="data">The folder.</param>
/// <param name="ledger">Opens the ledger in it.</param>
public sealed class FolderPlace(DataFolder data, Lazy<ShopLedger> ledger) : ShopPlace, IDisposable
{
    /// <summary>With its ledger opened when it is first asked for.</summary>
    public static FolderPlace Later(DataFolder data) =>
        new(data, new Lazy<ShopLedger>(() => SqliteLedger.Open(data.Path, TimeProvider.System)));

    /// <summary>With its ledger open.</summary>
    /// <exception cref="LedgerUnavailable">It cannot be opened.</exception>
    public static FolderPlace Opened(DataFolder data)
    {
        var ledger = SqliteLedger.Open(data.Path, TimeProvider.System);
        return new(data, new Lazy<ShopLedger>(ledger));
    }

    /// <summary>Nothing of it stays open.</summary>
    public void Dispose()
    {
        if (ledger.IsValueCreated)
            ledger.Value.Dispose();
    }

    /// <inheritdoc />
    public override bool IsOfGroup => false;

    /// <inheritdoc />
    public override ShopLedger Ledger => ledger.Value;

    /// <inheritdoc />
    public override ShopLedger? LedgerIfThere() => File.Exists(data.In(SqliteLedger.FileName)) ? Ledger : null;

    /// <inheritdoc />
    public override GroupSheets? Sheets => null;

    /// <inheritdoc />
    public override MachineRegister? MachinesIfThere() => MachineRegister.OpenIfThere(data.Path);

    /// <inheritdoc />
    public override MachineRegister Machines() => MachineRegister.Open(data.Path);

    /// <inheritdoc />
    public override CampaignStore? CampaignsIfThere() => CampaignStore.OpenIfThere(data.Path);

    /// <inheritdoc />
    public override CampaignStore Campaigns() => CampaignStore.Open(data.Path);

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
