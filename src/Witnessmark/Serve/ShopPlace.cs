using Witnessmark.Bench.Photographs;
using Witnessmark.Keys;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Stock;
using Witnessmark.LogBooks;

namespace Witnessmark.Serve;

/// <summary>Where a shop keeps what its server writes: in its data folder, or in the store of a group of shops.</summary>
public abstract class ShopPlace
{
    /// <summary>Whether other servers write there too, so that nothing may be kept beside it.</summary>
    public abstract bool IsOfGroup { get; }

    /// <summary>The entries.</summary>
    public abstract ShopLedger Ledger { get; }

    /// <summary>The entries; null when there is no ledger yet.</summary>
    public abstract ShopLedger? LedgerIfThere();

    /// <summary>Revisions of figure sheets made on a screen; null where they are files.</summary>
    public abstract GroupSheets? Sheets { get; }

    /// <summary>The machines; null when no list was ever taken in.</summary>
    public abstract MachineRegister? MachinesIfThere();

    /// <summary>The machines; made when they are not there.</summary>
    public abstract MachineRegister Machines();

    /// <summary>Recalls and bulletins; null when no list was ever taken in.</summary>
    public abstract CampaignStore? CampaignsIfThere();

    /// <summary>Recalls and bulletins; made when they are not there.</summary>
    public abstract CampaignStore Campaigns();

    /// <summary>Who may come in; null when the shop never had a door.</summary>
    public abstract DoorStore? DoorIfThere();

    /// <summary>Who may come in; made when it is not there.</summary>
    public abstract DoorStore Door();

    /// <summary>Entries that count for nothing: nobody showed the door whose word they count by.</summary>
    public IReadOnlySet<string> NotCounting() => DoorIfThere()?.NotCounting() ?? new HashSet<string>();

    /// <summary>The shelf; null when nothing was ever moved.</summary>
    public abstract StockStore? StockIfThere();

    /// <summary>The shelf; made when it is not there.</summary>
    public abstract StockStore Stock();

    /// <summary>What the shop signs with; made on first use.</summary>
    /// <exception cref="FormatException">What is there is no key.</exception>
    public abstract ShopKey Key();

    /// <summary>Log books that machines brought along.</summary>
    public abstract LogBookShelf LogBooks { get; }

    /// <summary>A photograph's bytes, or null when the shop does not have it.</summary>
    public abstract byte[]? Photograph(string sha256);

    /// <summary>Keeps a photograph; false when it was there.</summary>
    public abstract bool Put(StoredPicture photograph);
}
