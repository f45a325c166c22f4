using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Verify;

/// <summary>Walks the ledger of a data folder and says what it found.</summary>
public static class VerifyLedger
{
    /// <summary>The exit code.</summary>
    public static int Run(string folder, TextWriter output, TextWriter errors, bool json = false) =>
        Run(() => SqliteLedger.Check(folder), output, errors, json);

    /// <summary>The same of a shop in the store of its group.</summary>
    public static int Run(Func<GroupFile> group, TextWriter output, TextWriter errors, bool json) =>
        Run(() => InStore(group()), output, errors, json);

    private static LedgerFinding InStore(GroupFile group)
    {
        using var shop = GroupShop.Open(group.Connection, TimeProvider.System);
        return shop.Check();
    }

    private static int Run(Func<LedgerFinding> check, TextWriter output, TextWriter errors, bool json)
    {
        try
        {
            return Say(check(), output, json);
        }
        catch (Exception reason) when (reason is LedgerUnavailable or FormatException)
        {
            if (json)
                output.WriteLine(VerifyJson.Unreadable(reason.Message));
            else
                errors.WriteLine(reason.Message);
            return VerifyCommand.Unreadable;
        }
    }

    internal static string Summary(LedgerFinding finding) =>
        $"{(finding.Faults.Count == 0 ? "Intact" : "CHANGED")}: {finding.Entries} entries in {finding.Jobs} jobs; {finding.SetAside} set aside.";

    private static int Say(LedgerFinding finding, TextWriter output, bool json)
    {
        if (json)
            output.WriteLine(VerifyJson.Of(finding));
        else
        {
            foreach (var fault in finding.Faults)
                output.WriteLine(fault);
            output.WriteLine(Summary(finding));
        }
        return finding.Faults.Count == 0 ? VerifyCommand.Intact : VerifyCommand.Changed;
    }
}
