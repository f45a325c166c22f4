using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.DaySolver;
using Witnessmark.Groups;

namespace Witnessmark.Day;

/// <summary><c>witnessmark day DAY.toml|FOLDER</c>: who works at which machine on which lift, and when.</summary>
internal static class DayCommand
{
    /// <summary>A promise is missed, or a job has no place.</summary>
    public const int Missed = 4;

    public static Command Create()
    {
        var of = new Argument<string>("DAY.toml|FOLDER")
        {
            Description = "A day as a file, or a shop's data folder with its ledger.",
        };
        var at = new Option<string?>("--at")
        {
            Description = "With a folder: when the plan begins, 2026-11-26T08:00; now otherwise.",
        };
        var seconds = new Option<double>("--seconds")
        {
            Description = "How long it may be searched for, 0.1 to 600.",
            DefaultValueFactory = _ => DaySearch.UsualSeconds,
        };
        seconds.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double>() is not (>= 0.1 and <= 600))
                result.AddError($"--seconds {result.GetValueOrDefault<double>()}: 0.1 to 600 is allowed.");
        });
        var group = GroupOption.Create();
        var json = new Option<bool>("--json") { Description = "Print JSON." };
        var command = new Command("day", "Plan the day: least lateness, then least time on the lifts.")
        {
            of,
            at,
            seconds,
            group,
            json,
        };
        command.SetAction(parsed =>
            Run(
                CommandPlace.Of(parsed, parsed.GetValue(of)!, group),
                parsed.GetValue(at),
                parsed.GetValue(seconds),
                parsed.GetValue(json)
            )
        );
        return command;
    }

    private static int Run(CommandPlace of, string? at, double seconds, bool json)
    {
        var asked =
            Directory.Exists(of.Folder) ? DayOnDisk.OfShop(of, at)
            : of.Group is null ? DayOnDisk.OfFile(new(of.Folder), at)
            : DayAsked.Not($"{of.Folder}: --group goes with the folder of the shop's files.");
        if (asked.Question is not { } question)
        {
            foreach (var mistake in asked.Mistakes)
                Console.Error.WriteLine(mistake);
            Console.Error.WriteLine("Nothing was planned.");
            return ExitCode.Malformed;
        }
        var (solved, why) = DaySolving.Solve(question, seconds);
        if (solved is null)
        {
            Console.Error.WriteLine(why);
            return ExitCode.Malformed;
        }
        if (json)
            JsonText.Print(DayJson.Of(question, solved, asked.NotWhole, Tongue.Written));
        else
            DayReport.Write(Console.Out, question, solved, asked.NotWhole);
        return solved.Measure.Lateness > 0 || solved.Without.Count > 0 ? Missed : ExitCode.Ok;
    }
}
