using System.CommandLine;
using Witnessmark.Bench.Photographs;
using Witnessmark.Calc;
using Witnessmark.Keys;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.LogBooks;
using Witnessmark.Serve;

namespace Witnessmark.Groups;

/// <summary><c>witnessmark migrate --to postgres</c>: copies a shop's data folder into the store of its group.</summary>
public static class MigrateCommand
{
    private const string Postgres = "postgres";

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "data folder of the shop; it is read and left as it is",
            DefaultValueFactory = _ => "data",
        };
        var to = new Option<string>("--to") { Description = $"where to: {Postgres}", Required = true };
        to.AcceptOnlyFromAmong(Postgres);
        var group = GroupOption.Create();
        group.Required = true;
        var migrate = new Command(
            "migrate",
            "Copy a shop from its data folder into the store of its group, whole or not at all. Ends with 0 copied, 1 the folder is not whole, 2 not copied."
        )
        {
            to,
            data,
            group,
        };
        migrate.SetAction(parsed =>
            Run(parsed.GetRequiredValue(data), () => group.Of(parsed)!, Console.Out, Console.Error)
        );
        return migrate;
    }

    /// <summary>The exit code.</summary>
    public static int Run(string data, Func<GroupFile> group, TextWriter output, TextWriter errors)
    {
        try
        {
            if (Refusal(data) is { } refusal)
                throw new IOException(refusal);
            // a folder that was never served has no such file, and is left without it
            using var held = File.Exists(Path.Combine(data, ServedFolder.FileName)) ? ServedFolder.Hold(data) : null;
            var photographs = Photographs(data);
            var found = FolderCopy.Into(data, group().Connection, photographs, LogBooks(data), Secrets(data, group()));
            output.WriteLine(
                $"Copied and checked: {found.Entries} entries in {found.Jobs} jobs, {found.SetAside} set aside, {photographs.Count} photographs. Serve it with --group from now on, and {data} no more: what came in there would be in no store."
            );
            return ExitCode.Ok;
        }
        catch (ChangedFolder broken)
        {
            foreach (var fault in broken.Faults)
                errors.WriteLine(fault);
            errors.WriteLine("The data folder is not whole, so nothing was copied. See witnessmark doctor.");
            return ExitCode.Differs;
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }

    private static string? Refusal(string data) =>
        File.Exists(Path.Combine(data, SqliteLedger.FileName)) ? null : $"There is no ledger in {data}.";

    private static Dictionary<string, string> Photographs(string data)
    {
        var folder = Path.Combine(data, "photographs");
        return Directory.Exists(folder)
            ? Directory
                .GetFiles(folder, "*.jpg")
                .Where(file => Picture.IsHash(Path.GetFileNameWithoutExtension(file)))
                .ToDictionary(file => Path.GetFileNameWithoutExtension(file))
            : [];
    }

    private static Dictionary<string, string> LogBooks(string data)
    {
        var folder = Path.Combine(data, LogBookFiles.Folder);
        return Directory.Exists(folder)
            ? Directory
                .GetFiles(folder, "*.json")
                .ToDictionary(file => Path.GetFileNameWithoutExtension(file), File.ReadAllText)
            : [];
    }

    private static Dictionary<string, byte[]> Secrets(string data, GroupFile group)
    {
        var (key, shop) = (group.OpensSecrets, GroupShop.NameIn(group.Connection));
        return KeyFolder.TextOfShopKey(data) is { } text
            ? new() { [SealedSecret.SigningKey] = SealedSecret.Seal(key, shop, SealedSecret.SigningKey, text) }
            : [];
    }
}
