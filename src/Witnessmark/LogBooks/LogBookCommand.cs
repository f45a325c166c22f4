using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.Keys;
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
        var data = new Option<string>("--data") { Description = "the workshop's data folder", Required = true };
        var keep = new Command(
            "keep",
            "Check a log book and keep its visits: this workshop's next log book of the machine begins with them."
        )
        {
            file,
            data,
        };
        keep.SetAction(parsed => Run(parsed.GetValue(file)!, parsed.GetValue(data)!));
        return new("log-book", "Log books that machines bring along.") { keep };
    }

    private static int Run(FileInfo file, string data)
    {
        try
        {
            var (logBook, _) = CarriedLogBook.Read(file);
            var finding = LogBookFile.Verify(logBook, KeyFolder.OfShop(data));
            Console.Out.WriteLine(finding.Says);
            if (finding.Word is not (LogBookWord.Intact or LogBookWord.UnknownKey))
            {
                Console.Error.WriteLine("Nothing was kept.");
                return VerifyCommand.CodeOf(finding.Word);
            }
            var (vin, visits) = new LogBookShelf(data).Keep(logBook);
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
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }
}
