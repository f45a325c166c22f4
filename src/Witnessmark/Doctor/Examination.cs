using System.Globalization;
using Witnessmark.Backups;
using Witnessmark.Bench.Jobs;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;

namespace Witnessmark.Doctor;

/// <summary>Looks at everything that a shop stands on. Changes nothing.</summary>
public static class Examination
{
    private static readonly TimeSpan ClockLeeway = TimeSpan.FromMinutes(2); // a choice of this program

    /// <summary>All that was looked at, good or not.</summary>
    /// <param name="data">The data folder.</param>
    /// <param name="now">This computer's clock.</param>
    public static IReadOnlyList<Finding> Of(string data, DateTimeOffset now) =>
        [
            OfPlace(data),
            .. DataPlace.DriveOf(data) is { } drive ? [OfRoom(drive.AvailableFreeSpace)] : (Finding[])[],
            OfServer(data),
            CertificateFinding.Of(data, now),
            OfFiles(data),
            .. OfDatabases(data),
            OfLedger(data),
            .. OfDoor(data),
            OfClock(data, now),
            OfPhotographs(data),
        ];

    /// <summary>Whether the room that is left will do.</summary>
    public static Finding OfRoom(long free) =>
        free >= DataPlace.LeastFree
            ? new("room", true, $"{Gigabytes(free)} GB are free.")
            : new(
                "room",
                false,
                $"Only {Gigabytes(free)} GB are free: make room, {Gigabytes(DataPlace.LeastFree)} GB at least. When the disk is full the bench goes on, but nothing is saved at the shop."
            );

    private static Finding OfPlace(string data) =>
        DataPlace.Refusal(data) is { } refusal
            ? new("place", false, refusal)
            : new("place", true, $"On this computer's own disk ({DataPlace.DriveOf(data)!.DriveFormat}).");

    private static Finding OfServer(string data) =>
        new("server", true, ServedFolder.IsHeld(data) ? "Being served now." : "Not served now.");

    private static Finding OfFiles(string data)
    {
        var (bench, mistakes) = WorkbenchFiles.Read(new DataFolder(data).Workbench());
        return bench is not null
            ? new("files", true, $"{bench.Sheets.Count} figure sheets, {bench.Book.Points.Count} points.")
            : new("files", false, string.Join(" ", mistakes.Select(m => m.ToString())));
    }

    private static IEnumerable<Finding> OfDatabases(string data) =>
        BackupFiles
            .Of(data)
            .Where(name => SqliteCopy.IsOne(Path.Combine(data, name)))
            .Select(name =>
                Read(
                    name,
                    () => SqliteCopy.Fault(Path.Combine(data, name)),
                    fault => fault ?? "Sound.",
                    fault => fault is null
                )
            );

    private static Finding OfLedger(string data) =>
        Read(
            "ledger",
            () => SqliteLedger.Check(data),
            found =>
                found.Faults.Count == 0
                    ? $"Intact: {found.Entries} entries in {found.Jobs} jobs; {found.SetAside} set aside."
                    : string.Join(" ", found.Faults),
            found => found.Faults.Count == 0
        );

    /// <summary>The book of the door, where there is one: an event that was changed or taken out is told.</summary>
    private static IEnumerable<Finding> OfDoor(string data)
    {
        if (File.Exists(Path.Combine(data, DoorStore.FileName)))
            yield return Read(
                "door",
                () => DoorStore.Open(data).Look(rows => (Events: rows.AllEvents(), Closed: rows.IsClosed())),
                door =>
                    EventChain.Fault(door.Events)
                    ?? $"{(door.Closed ? "Closed" : "Open")}; its book of {door.Events.Count} events is whole.",
                door => EventChain.Fault(door.Events) is null
            );
    }

    private static Finding OfClock(string data, DateTimeOffset now) =>
        Read(
            "clock",
            () => SqliteLedger.LastReceived(data),
            last => OfClock(last, now).Says,
            last => OfClock(last, now).Good
        );

    /// <summary>Whether this computer's clock may be right.</summary>
    /// <param name="last">When the newest entry came in, or null.</param>
    /// <param name="now">What the clock says.</param>
    internal static Finding OfClock(DateTimeOffset? last, DateTimeOffset now) =>
        IsBehind(last, now)
            ? new(
                "clock",
                false,
                $"This computer's clock says {Minute(now)}, but an entry came in at {Minute(last!.Value)}: set the clock. No entry is lost by it; days and times are wrong."
            )
            : new("clock", true, $"{Minute(now)}; the last entry came in {(last is { } at ? Minute(at) : "never")}.");

    private static bool IsBehind(DateTimeOffset? last, DateTimeOffset now) => last > now + ClockLeeway;

    private static Finding OfPhotographs(string data)
    {
        string[] names = [.. BackupFiles.Of(data).Where(n => n.StartsWith("photographs/", StringComparison.Ordinal))];
        string[] changed = [.. names.Where(n => BackupCheck.IsAnother(BackupRun.Described(data, n)))];
        return changed.Length == 0
            ? new("photographs", true, $"{names.Length}, each as its name says.")
            : new("photographs", false, $"Not the pictures that their names say: {string.Join(", ", changed)}.");
    }

    /// <summary>What cannot be read at all is a finding too.</summary>
    private static Finding Read<T>(string of, Func<T> read, Func<T, string> says, Func<T, bool> good)
    {
        try
        {
            var found = read();
            return new(of, good(found), says(found));
        }
        catch (LedgerUnavailable broken)
        {
            return new(of, false, broken.Message);
        }
    }

    private static string Minute(DateTimeOffset at) =>
        at.UtcDateTime.ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture);

    private static string Gigabytes(long bytes) => (bytes / 1e9).ToString("0.0", CultureInfo.InvariantCulture);
}
