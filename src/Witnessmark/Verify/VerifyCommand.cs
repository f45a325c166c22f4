using System.CommandLine;

namespace Witnessmark.Verify;

/// <summary><c>witnessmark verify</c>: has anything been changed since it was written?</summary>
public static class VerifyCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data") { Description = "data folder with the ledger", Required = true };
        var verify = new Command("verify", "Walk every chain of a ledger. Ends with 0 intact, 1 changed, 2 unreadable.")
        {
            data,
        };
        verify.SetAction(parsed => VerifyLedger.Run(parsed.GetRequiredValue(data), Console.Out, Console.Error));
        return verify;
    }
}
