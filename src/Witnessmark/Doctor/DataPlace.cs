namespace Witnessmark.Doctor;

/// <summary>Where the data folder lies: the kind of its file system, and the room that is left.</summary>
public static class DataPlace
{
    /// <summary>Below this a shop should make room: a gigabyte, a choice of this program.</summary>
    public const long LeastFree = 1_000_000_000;

    // Names of file systems that other computers serve, as Linux, Windows and macOS call them.
    private static readonly string[] OverTheNetwork =
    [
        "nfs",
        "nfs4",
        "cifs",
        "smb",
        "smb2",
        "smb3",
        "smbfs",
        "afpfs",
        "webdav",
        "davfs",
        "9p",
        "fuse.sshfs",
        "fuse.glusterfs",
        "ceph",
        "glusterfs",
    ];

    /// <summary>Whether a file system is served by another computer.</summary>
    /// <remarks><b>Source.</b> SQLite documentation, "Write-Ahead Logging", 1: all processes must be on the same host, WAL does not work over a network file system.</remarks>
    public static bool IsOverTheNetwork(DriveType type, string format) =>
        type is DriveType.Network || OverTheNetwork.Contains(format, StringComparer.OrdinalIgnoreCase);

    /// <summary>The file system that a folder lies on; null where the system names none, as for a share without a letter.</summary>
    public static DriveInfo? DriveOf(string folder)
    {
        var path = Path.GetFullPath(folder);
        return DriveInfo
            .GetDrives()
            .Where(d => IsUnder(path, d.RootDirectory.FullName))
            .MaxBy(d => d.RootDirectory.FullName.Length);
    }

    /// <summary>What keeps a ledger from lying there, or null.</summary>
    public static string? Refusal(string folder)
    {
        var drive = DriveOf(folder);
        return drive is not null && !IsOverTheNetwork(drive.DriveType, drive.DriveFormat)
            ? null
            : $"{folder} lies on a file system of another computer ({drive?.DriveFormat ?? "a share"}): there a ledger can be lost. Name a folder on this computer's own disk.";
    }

    private static bool IsUnder(string path, string root) =>
        $"{path}{Path.DirectorySeparatorChar}".StartsWith(
            root.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.OrdinalIgnoreCase
        );
}
