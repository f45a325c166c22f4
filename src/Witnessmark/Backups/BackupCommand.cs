using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Calc;

namespace Witnessmark.Backups;

/// <summary><c>witnessmark backup</c>: a copy of all that the shop has, checked before it counts.</summary>
public static class BackupCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "data folder of the shop; it may be served meanwhile",
            DefaultValueFactory = _ => "data",
        };
        var to = new Option<string>("--to") { Description = "folder that keeps the backups", Required = true };
        var json = new Option<bool>("--json") { Description = "one JSON object: backup, at, entries, files, bytes" };
        var backup = new Command(
            "backup",
            "Copy all that a shop has, and check the copy. Ends with 0 whole, 1 broken, 2 not written."
        )
        {
            data,
            to,
            json,
        };
        backup.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(data),
                parsed.GetRequiredValue(to),
                parsed.GetValue(json),
                TimeProvider.System.GetUtcNow(),
                Console.Out,
                Console.Error
            )
        );
        return backup;
    }

    /// <summary>The exit code.</summary>
    public static int Run(string data, string to, bool json, DateTimeOffset at, TextWriter output, TextWriter errors)
    {
        try
        {
            if (!Directory.Exists(data))
                throw new IOException($"There is no data folder {data}.");
            var (folder, record) = BackupRun.Write(data, to, at);
            output.WriteLine(json ? Object(folder, record) : Said(folder, record));
            return ExitCode.Ok;
        }
        catch (BrokenBackup broken)
        {
            foreach (var fault in broken.Faults)
                errors.WriteLine(fault);
            errors.WriteLine("The data folder itself is not whole, so no backup was kept. See witnessmark doctor.");
            return ExitCode.Differs;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(broken.Message);
            return ExitCode.Malformed;
        }
    }

    private static string Said(string folder, BackupRecord record) =>
        $"{folder}: {record.Files.Count} files, {record.Entries} entries; opened, checked, whole.";

    private static string Object(string folder, BackupRecord record) =>
        new JsonObject
        {
            ["backup"] = folder,
            ["at"] = record.At,
            ["entries"] = record.Entries,
            ["files"] = record.Files.Count,
            ["bytes"] = record.Files.Sum(f => f.Bytes),
        }.ToJsonString(new JsonSerializerOptions { WriteIndented = true });
}
