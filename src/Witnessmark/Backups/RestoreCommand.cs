using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Calc;

namespace Witnessmark.Backups;

/// <summary><c>witnessmark restore</c>: brings a backup back, or only checks it.</summary>
public static class RestoreCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var backup = new Argument<string>("BACKUP") { Description = "folder of one backup" };
        var data = new Option<string?>("--data") { Description = "empty data folder that it is brought back into" };
        var check = new Option<bool>("--check") { Description = "only check it, write nothing" };
        var json = new Option<bool>("--json") { Description = "one JSON object: verdict, at, entries, files, where" };
        var restore = new Command(
            "restore",
            "Bring a backup back into an empty folder, or check it. Ends with 0 whole, 1 changed, 2 not read or not written."
        )
        {
            backup,
            data,
            check,
            json,
        };
        restore.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(backup),
                parsed.GetValue(data),
                parsed.GetValue(check),
                parsed.GetValue(json),
                TimeProvider.System,
                Console.Out,
                Console.Error
            )
        );
        return restore;
    }

    /// <summary>The exit code.</summary>
    public static int Run(
        string backup,
        string? data,
        bool check,
        bool json,
        TimeProvider clock,
        TextWriter output,
        TextWriter errors
    )
    {
        if (check == data is not null)
        {
            errors.WriteLine("Name an empty folder with --data, or say --check: one of the two.");
            return ExitCode.Malformed;
        }
        try
        {
            var record = data is null ? Checked(backup) : RestoreRun.Run(backup, data, clock);
            output.WriteLine(json ? Object("whole", record, []) : Said(record, data));
            return ExitCode.Ok;
        }
        catch (BrokenBackup broken)
        {
            if (json)
                output.WriteLine(Object("changed", BackupRecord.Of(backup), broken.Faults));
            foreach (var fault in json ? [] : broken.Faults)
                errors.WriteLine(fault);
            return ExitCode.Differs;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or FormatException)
        {
            errors.WriteLine(broken.Message);
            return ExitCode.Malformed;
        }
    }

    private static BackupRecord Checked(string backup) =>
        BackupCheck.Of(backup) is { Count: > 0 } faults ? throw new BrokenBackup(faults) : BackupRecord.Of(backup);

    private static string Said(BackupRecord record, string? data) =>
        $"Whole: {record.Files.Count} files, {record.Entries} entries, written {record.At.UtcDateTime:yyyy-MM-dd HH:mm} UTC."
        + (
            data is null
                ? ""
                : $" Brought back into {data}: every device sends again what it has when it meets this shop."
        );

    private static string Object(string verdict, BackupRecord record, IEnumerable<string> where) =>
        new JsonObject
        {
            ["verdict"] = verdict,
            ["at"] = record.At,
            ["entries"] = record.Entries,
            ["files"] = record.Files.Count,
            ["where"] = new JsonArray([.. where.Select(w => (JsonNode)w)]),
        }.ToJsonString(new JsonSerializerOptions { WriteIndented = true });
}
