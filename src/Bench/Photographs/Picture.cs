namespace Witnessmark.Bench.Photographs;

/// <summary>A stored picture: a plain JPEG file, named by the hash of its bytes.</summary>
/// <param name="Sha256">SHA-256 of all its bytes, 64 digits of lower-case hex.</param>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Bytes">Its length.</param>
public sealed record Picture(string Sha256, int Width, int Height, int Bytes)
{
    /// <summary>The only kind that is kept.</summary>
    public const string MediaType = "image/jpeg";

    /// <summary>Longest side in pixels: enough to read a manual's page, small enough to be sent from a workshop's corner.</summary>
    public const int LongestSide = 1600;

    /// <summary>Most bytes of one picture: 2 MiB; a picture of that side shrunk at the bench has less than half.</summary>
    public const int MostBytes = 2 * 1024 * 1024;

    private const int HashDigits = 64;

    /// <summary>Whether a text can be the hash of a picture.</summary>
    public static bool IsHash(string text) => text.Length == HashDigits && text.All(char.IsAsciiHexDigitLower);
}
