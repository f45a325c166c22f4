using Witnessmark.Bench.Photographs;
using Witnessmark.Serve;

namespace Witnessmark.Photographs;

/// <summary>The photographs of a shop: <c>photographs/SHA256.jpg</c> in its data folder. A picture is put there once and never changed.</summary>
internal static class PhotographFolder
{
    private const string Folder = "photographs";

    /// <summary>The path of a picture.</summary>
    public static string PathOf(DataFolder data, string sha256) => Path.Combine(data.In(Folder), $"{sha256}.jpg");

    /// <summary>The picture's bytes, or null when the shop does not have it.</summary>
    public static byte[]? Find(DataFolder data, string sha256) =>
        Picture.IsHash(sha256) && File.Exists(PathOf(data, sha256)) ? File.ReadAllBytes(PathOf(data, sha256)) : null;

    /// <summary>Puts a picture in place; answers false when it stood there already.</summary>
    /// <remarks>A machine that stops in between leaves no picture under this name, never half of one.</remarks>
    /// <exception cref="IOException">The disk is full.</exception>
    public static bool Put(DataFolder data, StoredPicture stored)
    {
        var path = PathOf(data, stored.Picture.Sha256);
        if (File.Exists(path))
            return false;
        Directory.CreateDirectory(data.In(Folder));
        var beside = $"{path}.{Guid.NewGuid():N}.new"; // two devices may send the same picture at the same time
        try
        {
            using (var file = new FileStream(beside, FileMode.CreateNew))
            {
                file.Write(stored.Bytes);
                file.Flush(flushToDisk: true);
            }
            File.Move(beside, path, overwrite: true); // only the same bytes have the same hash
        }
        finally
        {
            File.Delete(beside);
        }
        return true;
    }
}
