using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Serve;

/// <summary>What the server serves: the files as they are, what they say, and the ledger.</summary>
public sealed record ServedShop(IReadOnlyList<SourceText> Files, Workbench Bench, ShopLedger Ledger)
{
    /// <summary>Opens the shop in a data folder, or says every mistake that keeps it closed.</summary>
    /// <exception cref="LedgerUnavailable">The ledger cannot be opened.</exception>
    public static ServedShop? Open(DataFolder data, TimeProvider clock, TextWriter mistakesTo)
    {
        var files = data.Workbench();
        var (bench, mistakes) = WorkbenchFiles.Read(files);
        foreach (var mistake in mistakes)
            mistakesTo.WriteLine(mistake);
        return bench is null ? null : new(files, bench, SqliteLedger.Open(data.Path, clock));
    }
}
