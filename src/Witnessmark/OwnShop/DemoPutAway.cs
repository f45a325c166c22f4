using System.Globalization;
using System.Text;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Ledger.Stock;
using Witnessmark.Serve;

namespace Witnessmark.OwnShop;

/// <summary>
/// Puts the demo's data aside and the files of a shop of one's own in their place, by renames alone. Until the first of them the whole demo is
/// there; from it on the next start ends what was begun, so that a power cut leaves the one or the other.
/// </summary>
public static class DemoPutAway
{
    /// <summary>What the folders begin with into which demos were put.</summary>
    public const string Prefix = "demo-put-away-";

    private static readonly Lock Beginning = new(); // two who ask at the same time are answered one after the other
    private const string Preparing = "own-shop.preparing";
    private const string Begun = "own-shop.begun";
    private const string Aside = "demo";
    private const string Own = "own";
    private const string NameFile = "put-away-as";

    // the bench book and the computer's certificates stay
    private static readonly string[] OfDemo =
    [
        .. (
            (string[])
                [
                    SqliteLedger.FileName,
                    CampaignStore.FileName,
                    MachineRegister.FileName,
                    StockStore.FileName,
                    DoorStore.FileName,
                ]
        ).SelectMany(file => (string[])[$"{file}-wal", $"{file}-shm", $"{file}-journal", file]),
        "photographs",
        "log-books",
        "keys/shop.json",
        "sheets",
        PutAwayShops.FileName,
        DemoShop.FileName,
        "shop.toml",
    ];

    /// <summary>Whether it was begun and not ended.</summary>
    public static bool IsBegun(string data) => Directory.Exists(Path.Combine(data, Begun));

    /// <summary>Begins it: from here on nothing keeps it from being ended.</summary>
    /// <returns>The name of the folder into which the demo goes; null when it was begun already.</returns>
    public static string? Begin(string data, IReadOnlyList<SourceText> files, DateTimeOffset at)
    {
        lock (Beginning)
            return IsBegun(data) ? null : BeginAlone(data, files, at);
    }

    private static string BeginAlone(string data, IReadOnlyList<SourceText> files, DateTimeOffset at)
    {
        Drop(data);
        var name = Prefix + at.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var half = Path.Combine(data, Preparing);
        Directory.CreateDirectory(Path.Combine(half, Aside));
        foreach (var file in files)
            Put(Path.Combine(half, Own, file.Name), file.Text);
        Put(Path.Combine(half, NameFile), name);
        Directory.Move(half, Path.Combine(data, Begun));
        return name;
    }

    /// <summary>Ends what was begun, and drops what was only prepared. To be called while nothing of the folder is open.</summary>
    public static void Finish(string data)
    {
        Drop(data);
        foreach (var _ in Steps(data)) { }
    }

    /// <summary>The same step by step: after each the power may go.</summary>
    public static IEnumerable<string> Steps(string data)
    {
        var begun = Path.Combine(data, Begun);
        if (!Directory.Exists(begun))
            yield break;
        var aside = Path.Combine(begun, Aside);
        if (Directory.Exists(aside))
        {
            foreach (var name in OfDemo.Where(name => IsThere(Path.Combine(data, name))))
            {
                Move(Path.Combine(data, name), Path.Combine(aside, name));
                yield return name;
            }
            // when this is done, what lies in the data folder is the own shop's
            Directory.Move(aside, Path.Combine(data, File.ReadAllText(Path.Combine(begun, NameFile))));
            yield return Aside;
        }
        foreach (var path in OwnIn(begun))
        {
            Move(path, Path.Combine(data, Path.GetFileName(path)));
            yield return path;
        }
        Directory.Delete(begun, recursive: true);
        yield return Begun;
    }

    // shop.toml last: without it nothing is served
    private static IEnumerable<string> OwnIn(string begun) =>
        [
            .. Directory
                .GetFileSystemEntries(Path.Combine(begun, Own))
                .OrderBy(p => Path.GetFileName(p) == "shop.toml")
                .ThenBy(p => p, StringComparer.Ordinal),
        ];

    private static void Drop(string data)
    {
        var half = Path.Combine(data, Preparing);
        if (Directory.Exists(half))
            Directory.Delete(half, recursive: true);
    }

    private static bool IsThere(string path) => File.Exists(path) || Directory.Exists(path);

    private static void Move(string from, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        Directory.Move(from, to); // files too
    }

    private static void Put(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var file = new FileStream(path, FileMode.CreateNew);
        file.Write(Encoding.UTF8.GetBytes(text));
        file.Flush(flushToDisk: true);
    }
}
