using System.Security.Cryptography;
using Witnessmark.Handbook;

namespace Witnessmark.Bench.Photographs;

/// <summary>A picture with its bytes, as it is stored.</summary>
/// <param name="Picture">What it is.</param>
/// <param name="Bytes">The plain JPEG file.</param>
public sealed record StoredPicture(Picture Picture, byte[] Bytes)
{
    /// <summary>Takes a JPEG file, and leaves out of it what is not the picture.</summary>
    /// <param name="file">All its bytes.</param>
    /// <returns>Refused as by <see cref="JpegFile.Read"/>, and when it is too large (<c>too-many-pixels</c>, <c>too-many-bytes</c>).</returns>
    public static Answer<StoredPicture> Of(byte[] file)
    {
        var read = JpegFile.Read(file);
        if (read.Refusal is { } refusal)
            return Answer<StoredPicture>.Refuse(refusal.Key, refusal.Because);
        var (width, height, plain, _) = read.Certain;
        if (Math.Max(width, height) > Picture.LongestSide)
            return Answer<StoredPicture>.Refuse(
                "too-many-pixels",
                $"The picture has {width} × {height} pixels. Allowed: {Picture.LongestSide} on its longest side."
            );
        if (plain.Length > Picture.MostBytes)
            return Answer<StoredPicture>.Refuse(
                "too-many-bytes",
                $"The picture has {plain.Length} bytes. Allowed: {Picture.MostBytes}."
            );
        var hash = Convert.ToHexStringLower(SHA256.HashData(plain));
        return new StoredPicture(new(hash, width, height, plain.Length), plain);
    }
}
