using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Keys;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Paper.LogBook;
using Witnessmark.Verify;

namespace Witnessmark.LogBooks;

/// <summary><c>witnessmark log-book keep</c>: goes on from the log book that a machine brought along.</summary>
internal static class LogBookCommand
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("FILE")
        {
            Description = "a log book (JSON), or a handover sheet with one inside (PDF)",
        };
        var data = new Option<string>("--data")
        {
            Description =
                "the workshop's data folder; with --group the folder with its files, for the keys that it knows",
            Required = true,
        };
        var group = GroupOption.Create();
        var keep = new Command(
            "keep",
            "Check a log book and keep its visits: this workshop's next log book of the machine begins with them."
        )
        {
            file,
            data,
            group,
        };
        keep.SetAction(parsed => Run(parsed.GetValue(file)!, parsed.GetValue(data)!, () => group.Of(parsed)));
        return new("log-book", "Log books that machines bring along.") { keep };
    }

    private static int Run(FileInfo file, string data, Func<GroupFile?> group)
    {
        try
        {
            if (group() is not { } store)
                return Keep(file, KeyFolder.OfShop(data), LogBookShelf.In(data));
            using var shop = GroupShop.Open(store.Connection, TimeProvider.System);
            var own = GroupPlace.SigningKey(shop, store.OpensSecrets).Seal.Key;
            return Keep(file, KeyFolder.OthersAnd(own, data), GroupPlace.ShelfIn(shop));
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }

    private static int Keep(FileInfo file, KnownKeys keys, LogBookShelf shelf)
    {
        var (logBook, _) = CarriedLogBook.Read(file);
        var finding = LogBookFile.Verify(logBook, keys);
        Console.Out.WriteLine(finding.Says);
        if (finding.Word is not (LogBookWord.Intact or LogBookWord.UnknownKey))
        {
            Console.Error.WriteLine("Nothing was kept.");
            return VerifyCommand.CodeOf(finding.Word);
        }
        var (vin, visits) = shelf.Keep(logBook);
        if (vin is null)
        {
            Console.Error.WriteLine(
                "The log book names no frame number or VIN: it cannot be put beside a machine. Nothing was kept."
            );
            return ExitCode.Malformed;
        }
        Console.Out.WriteLine($"Kept for the machine {vin}: {visits} {(visits == 1 ? "visit" : "visits")}.");
        return 0;
    }
}
