using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Verify;

/// <summary>Walks the ledger of a data folder and says what it found.</summary>
public static class VerifyLedger
{
    private const int Intact = 0;
    private const int Changed = 1;
    private const int Unreadable = 2;

    /// <summary>The exit code.</summary>
    public static int Run(string folder, TextWriter output, TextWriter errors)
    {
        try
        {
            return Say(SqliteLedger.Check(folder), output);
        }
        catch (LedgerUnavailable reason)
        {
            errors.WriteLine(reason.Message);
            return Unreadable;
        }
    }

    private static int Say(LedgerFinding finding, TextWriter output)
    {
        foreach (var fault in finding.Faults)
            output.WriteLine(fault);
        output.WriteLine(
            $"{(finding.Faults.Count == 0 ? "Intact" : "CHANGED")}: {finding.Entries} entries in {finding.Jobs} jobs; {finding.SetAside} set aside."
        );
        return finding.Faults.Count == 0 ? Intact : Changed;
    }
}
