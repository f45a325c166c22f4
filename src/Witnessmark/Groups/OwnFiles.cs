using Witnessmark.Certificates;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Ledger.Stock;
using Witnessmark.LogBooks;

namespace Witnessmark.Groups;

/// <summary>What a server by itself writes into its data folder. Beside a group's store none of it may lie: two servers would have two of it.</summary>
internal static class OwnFiles
{
    private static readonly string[] InTheStore =
    [
        SqliteLedger.FileName,
        DoorStore.FileName,
        StockStore.FileName,
        MachineRegister.FileName,
        CampaignStore.FileName,
        "photographs",
        LogBookFiles.Folder,
        "keys/shop.json",
    ];

    /// <summary>The first of them in a folder, or null.</summary>
    public static string? FirstIn(string folder) =>
        InTheStore.Append(CertificateFolder.ServerFile).FirstOrDefault(name => Path.Exists(Path.Combine(folder, name)));
}
