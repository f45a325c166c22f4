using System.CommandLine;
using Witnessmark.Calc;

namespace Witnessmark.Verify;

/// <summary><c>witnessmark verify</c>: has anything been changed since it was written?</summary>
public static class VerifyCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var file = new Argument<FileInfo?>("FILE")
        {
            Description = "a log book (JSON)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var data = new Option<string?>("--data") { Description = "data folder with a ledger, instead of a file" };
        var verify = new Command(
            "verify",
            "Walk the chains of a log book or a ledger. Ends with 0 intact, 1 changed, 2 unreadable."
        )
        {
            file,
            data,
        };
        verify.SetAction(parsed => Run(parsed.GetValue(file), parsed.GetValue(data)));
        return verify;
    }

    private static int Run(FileInfo? file, string? data)
    {
        if (file is null == data is null)
        {
            Console.Error.WriteLine("Name a log book, or a data folder with --data: one of the two.");
            return ExitCode.Malformed;
        }
        return data is not null
            ? VerifyLedger.Run(data, Console.Out, Console.Error)
            : VerifyLogBook.Run(file!, Console.Out, Console.Error);
    }
}
