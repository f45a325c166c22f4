namespace Witnessmark.Ledger;

/// <summary>A folder into which nobody but its owner gets: what lies in it needs no rights of its own. Windows has other rights, which are left as they are.</summary>
public static class OwnFolder
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>Makes it; one that is there keeps the rights that somebody gave it.</summary>
    public static void Make(string path)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(path);
        else
            Directory.CreateDirectory(path, OwnerAlone);
    }

    /// <summary>Whether other users of the computer get into it.</summary>
    public static bool IsOpenToOthers(string path) =>
        !OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & ~OwnerAlone) != 0;
}
