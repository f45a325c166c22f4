using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Verify;

/// <summary><c>witnessmark verify</c>: has anything been changed since it was written?</summary>
public static class VerifyCommand
{
    /// <summary>As it was written.</summary>
    public const int Intact = 0;

    /// <summary>Changed, or cut.</summary>
    public const int Changed = 1;

    /// <summary>Nothing that can be read.</summary>
    public const int Unreadable = 2;

    /// <summary>Whole, but signed by a key that is not known.</summary>
    public const int UnknownKey = 3;

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var file = new Argument<FileInfo?>("FILE")
        {
            Description = "a log book (JSON), or a handover sheet with one inside (PDF)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var data = new Option<string?>("--data") { Description = "data folder with a ledger, instead of a file" };
        var group = GroupOption.Create();
        var keys = new Option<string?>("--keys")
        {
            Description = "folder with the public keys that are known (JWK files)",
        };
        var code = new Option<string?>("--code") { Description = "the text of the code on the paper, as scanned" };
        var json = new Option<bool>("--json") { Description = "one JSON object: verdict, exitCode, says, where" };
        var verify = new Command(
            "verify",
            "Check a log book, a handover sheet or a ledger. Ends with 0 intact, 1 changed or cut, 2 unreadable, 3 unknown key."
        )
        {
            file,
            data,
            group,
            keys,
            code,
            json,
        };
        verify.SetAction(parsed =>
            Run(
                parsed.GetValue(file),
                parsed.GetValue(data),
                parsed.GetResult(group) is null ? null : () => group.Of(parsed)!,
                parsed.GetValue(keys),
                parsed.GetValue(code),
                parsed.GetValue(json)
            )
        );
        return verify;
    }

    /// <summary>The exit code of what was found.</summary>
    public static int CodeOf(LogBookWord word) =>
        word switch
        {
            LogBookWord.Intact => Intact,
            LogBookWord.UnknownKey => UnknownKey,
            LogBookWord.Unreadable => Unreadable,
            _ => Changed,
        };

    private static int Run(FileInfo? file, string? data, Func<GroupFile>? group, string? keys, string? code, bool json)
    {
        if (new object?[] { file, data, group }.Count(asked => asked is not null) != 1)
        {
            Console.Error.WriteLine(
                "Name a log book or a handover sheet, or a data folder with --data, or a shop of a group with --group: one of them."
            );
            return ExitCode.Malformed;
        }
        if (keys is not null && !Directory.Exists(keys))
        {
            Console.Error.WriteLine($"There is no folder \"{keys}\" with keys.");
            return ExitCode.Malformed;
        }
        return group is not null ? VerifyLedger.Run(group, Console.Out, Console.Error, json)
            : data is not null ? VerifyLedger.Run(data, Console.Out, Console.Error, json)
            : VerifyLogBook.Run(file!, keys, code, Console.Out, Console.Error, json);
    }
}
