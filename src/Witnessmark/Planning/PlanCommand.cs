using System.CommandLine;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;

namespace Witnessmark.Planning;

/// <summary><c>witnessmark plan JOB.toml</c>: what to do today, what to get ready, and in which order.</summary>
internal static class PlanCommand
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("JOB.toml")
        {
            Description = "The job: machine and purpose; what its steps have done already is not planned again.",
        };
        var json = new Option<bool>("--json") { Description = "As JSON: points, kit, order, totals." };
        var data = new Option<DirectoryInfo?>("--data")
        {
            Description = "Data folder: earlier visits from its ledger, open campaigns from its lists.",
        };
        var group = GroupOption.Create();
        var command = new Command("plan", "What to do today, what to get ready, and in which order.")
        {
            file,
            json,
            data,
            group,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(file)!,
                parsed.GetValue(data) is null && parsed.GetResult(group) is null
                    ? null
                    : CommandPlace.Of(parsed, parsed.GetValue(data)?.FullName ?? "", group),
                parsed.GetValue(json)
            )
        );
        return command;
    }

    private static int Run(FileInfo file, CommandPlace? shop, bool json)
    {
        if (shop is { Group: null } && !Directory.Exists(shop.Folder))
            return Wrong($"There is no folder \"{shop.Folder}\".");
        try
        {
            var (plan, mistakes) = shop is null
                ? PlanOnDisk.Read(file, null)
                : shop.In(place => PlanOnDisk.Read(file, place));
            if (plan is null)
            {
                foreach (var mistake in mistakes)
                    Console.Error.WriteLine(mistake);
                return Wrong(
                    mistakes.Count == 1
                        ? "1 mistake; nothing was planned."
                        : $"{mistakes.Count} mistakes; nothing was planned."
                );
            }
            return Write(plan, json);
        }
        catch (LedgerUnavailable unavailable)
        {
            return Wrong(unavailable.Message);
        }
    }

    private static int Write(PlanOnDisk plan, bool json)
    {
        var answer = PlannedOrder.Of(plan.Open);
        if (answer.Refusal is { } refusal)
        {
            Console.Error.WriteLine($"refused  {refusal.Key}");
            Console.Error.WriteLine($"because  {refusal.Because}");
            return ExitCode.Refused;
        }
        if (json)
            Console.Out.WriteLine(PlanJson.Of(plan, answer.Certain));
        else
            PlanReport.Write(Console.Out, plan, answer.Certain);
        return ExitCode.Ok;
    }

    private static int Wrong(string says)
    {
        Console.Error.WriteLine(says);
        return ExitCode.Malformed;
    }
}
