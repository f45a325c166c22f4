using Witnessmark.Bench.Photographs;
using Witnessmark.Keys;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Stock;
using Witnessmark.LogBooks;
using Witnessmark.Serve;

namespace Witnessmark.Groups;

/// <summary>A shop in the store of its group: every server of it has the same.</summary>
/// <param name="shop">The shop in the store.</param>
/// <param name="key">What opens its sealed secrets.</param>
public sealed class GroupPlace(GroupShop shop, byte[] key) : ShopPlace
{
    /// <inheritdoc />
    public override bool IsOfGroup => true;

    /// <inheritdoc />
    public override ShopLedger Ledger => shop.Ledger;

    /// <inheritdoc />
    public override ShopLedger? LedgerIfThere() => shop.Ledger;

    /// <inheritdoc />
    public override GroupSheets? Sheets => shop.Sheets;

    /// <inheritdoc />
    public override MachineRegister? MachinesIfThere() => shop.Register.IsEmpty ? null : shop.Register;

    /// <inheritdoc />
    public override MachineRegister Machines() => shop.Register;

    /// <inheritdoc />
    public override CampaignStore? CampaignsIfThere() => shop.Campaigns.Lists().Count == 0 ? null : shop.Campaigns;

    /// <inheritdoc />
    public override CampaignStore Campaigns() => shop.Campaigns;

    /// <inheritdoc />
    public override DoorStore? DoorIfThere() => shop.Door;

    /// <inheritdoc />
    public override DoorStore Door() => shop.Door;

    /// <inheritdoc />
    public override StockStore? StockIfThere() => shop.Stock;

    /// <inheritdoc />
    public override StockStore Stock() => shop.Stock;

    /// <inheritdoc />
    public override ShopKey Key() => SigningKey(shop, key);

    /// <inheritdoc />
    public override LogBookShelf LogBooks { get; } = ShelfIn(shop);

    /// <inheritdoc />
    public override byte[]? Photograph(string sha256) => Picture.IsHash(sha256) ? shop.Files.Photograph(sha256) : null;

    /// <inheritdoc />
    public override bool Put(StoredPicture photograph) => shop.Files.Put(photograph.Picture.Sha256, photograph.Bytes);

    /// <summary>The log books that machines brought to the shop.</summary>
    public static LogBookShelf ShelfIn(GroupShop shop) => new(shop.Files.LogBook, shop.Files.ChangeLogBook);

    /// <summary>The shop's key; made on first use, by whichever server is first.</summary>
    /// <exception cref="FormatException">The file's key does not open it.</exception>
    public static ShopKey SigningKey(GroupShop shop, byte[] key)
    {
        var kept =
            shop.Files.Secret(SealedSecret.SigningKey)
            ?? shop.Files.SecretOr(
                SealedSecret.SigningKey,
                SealedSecret.Seal(key, shop.Name, SealedSecret.SigningKey, ShopKey.NewFile(ShopKey.Drawn()))
            );
        return ShopKey.Read(SealedSecret.Open(key, shop.Name, SealedSecret.SigningKey, kept));
    }
}
