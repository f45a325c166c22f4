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
    /// <summary>Registers that the store has no tables for yet, by the name that <c>migrate --without</c> takes.</summary>
    public static readonly IReadOnlyDictionary<string, string> NotInTheStore = new Dictionary<string, string>
    {
        ["campaigns"] = CampaignStore.FileName,
        ["machines"] = MachineRegister.FileName,
    };

    private static readonly string[] InTheStore =
    [
        SqliteLedger.FileName,
        DoorStore.FileName,
        StockStore.FileName,
        "photographs",
        LogBookFiles.Folder,
        "keys/shop.json",
    ];

    /// <summary>The first of them in a folder, or null.</summary>
    public static string? FirstIn(string folder) =>
        InTheStore
            .Concat(NotInTheStore.Values)
            .Append(CertificateFolder.ServerFile)
            .FirstOrDefault(name => Path.Exists(Path.Combine(folder, name)));

    /// <summary>The registers in a folder that cannot be copied, and were not said to be left.</summary>
    public static IReadOnlyList<string> LeftBehind(string folder, IReadOnlyList<string> without) =>
        [
            .. NotInTheStore
                .Where(r => Path.Exists(Path.Combine(folder, r.Value)) && !without.Contains(r.Key))
                .Select(r => r.Key),
        ];
}
