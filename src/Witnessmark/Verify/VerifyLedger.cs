using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Verify;

/// <summary>Walks the ledger of a data folder and says what it found.</summary>
public static class VerifyLedger
{
    /// <summary>The exit code.</summary>
    public static int Run(string folder, TextWriter output, TextWriter errors, bool json = false)
    {
        try
        {
            return Say(SqliteLedger.Check(folder), output, json);
        }
        catch (LedgerUnavailable reason)
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
