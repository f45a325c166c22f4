namespace Witnessmark.Tests.Photographs;

/// <summary>A real picture of 16 × 12 pixels, as a browser's canvas wrote it: a dark bar on grey. And the same with what a phone adds.</summary>
internal static class TinyPicture
{
    /// <summary>Its SHA-256, computed by another program (sha256sum of GNU coreutils).</summary>
    public const string Sha256 = "abb58914925511acd932ad7a8d2d924db2c41ce59030449ccb66e3065d3a2df0";

    public static byte[] Plain { get; } =
        Convert.FromBase64String(
            "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWG"
                + "kJ6jq62rZ4C8ybqmx5moq6T/2wBDARweHigjKE4rK06kbl1upKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSk"
                + "pKSkpKSkpKSkpKSkpKT/wAARCAAMABADASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAABAAD/8QAHhAAAQQBBQAAAAAA"
                + "AAAAAAAAAQACAwQRBRITIVH/xAAUAQEAAAAAAAAAAAAAAAAAAAAA/8QAFBEBAAAAAAAAAAAAAAAAAAAAAP/aAAwDAQACEQMR"
                + "AD8AZqFq5BO1tevyMLck7Ce8nxbafNPPA51iLjeHYA2kdYHqUpB//9k="
        );

    /// <summary>With a segment in which phones write where a picture was taken (Exif 2.32, 4.5.2: APP1 begins with "Exif").</summary>
    public static byte[] WithPlace { get; } =
    [.. Plain[..2], 0xFF, 0xE1, 0, 18, .. "Exif\0\0"u8, .. "51.5N 0.1W"u8, .. Plain[2..]];
}
