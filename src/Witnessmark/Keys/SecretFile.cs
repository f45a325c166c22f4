using System.Text;
using Witnessmark.Ledger;

namespace Witnessmark.Keys;

/// <summary>A file that nobody but its owner may read, written whole or not at all.</summary>
internal static class SecretFile
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes it; an older one is written over only where <paramref name="over"/> says so.</summary>
    /// <exception cref="IOException">There is one that may not be written over, or the disk is full.</exception>
    public static void Write(string path, string text, bool over = true)
    {
        OwnFolder.Make(Path.GetDirectoryName(path)!);
        var half = path + ".new";
        File.Delete(half); // what a write that was cut off left behind would keep its own rights
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerAlone;
        using (var file = new FileStream(half, options))
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }
        File.Move(half, path, over);
    }

    /// <summary>Whether others may read it. Windows has other rights, which are not looked at.</summary>
    public static bool IsOpenToOthers(string path) =>
        !OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & ~OwnerAlone) != 0;
}
