using System.Security.Cryptography;
using System.Text;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>The public key of a device: the private one never leaves the browser that made it.</summary>
/// <remarks><b>Source.</b> RFC 7518, 6.2.1 (the coordinates of a P-256 key are 32 bytes, base64url) and 3.4 (ES256: R and S, 32 bytes each).</remarks>
public static class DeviceKey
{
    private const int Coordinate = 32;
    private const int Signature = 2 * Coordinate;

    /// <summary>What a device signs: a word of its own for each deed, so that one signature is never good for another.</summary>
    public static string Statement(string deed, string nonce, string device, string person) =>
        string.Join('\n', "witnessmark door 1", deed, nonce, device, person);

    /// <summary>Whether the coordinates are those of a key on P-256.</summary>
    public static bool IsKey(string x, string y)
    {
        try
        {
            using var key = Key(x, y);
            return true;
        }
        catch (Exception wrong) when (wrong is CryptographicException or FormatException)
        {
            return false;
        }
    }

    /// <summary>Whether the device signed the statement.</summary>
    public static bool Signed(KeptDevice device, string statement, string signature) =>
        Signed(device.KeyX, device.KeyY, statement, signature);

    /// <summary>Whether the holder of the key signed the statement.</summary>
    public static bool Signed(string x, string y, string statement, string signature)
    {
        if (Coded.Bytes(signature, Signature) is not { } bytes)
            return false;
        using var key = Key(x, y);
        return key.VerifyData(
            Encoding.UTF8.GetBytes(statement),
            bytes,
            HashAlgorithmName.SHA256,
            DSASignatureFormat.IeeeP1363FixedFieldConcatenation
        );
    }

    private static ECDsa Key(string x, string y) =>
        ECDsa.Create(
            new ECParameters
            {
                Curve = ECCurve.NamedCurves.nistP256,
                Q = new() { X = Bytes(x), Y = Bytes(y) },
            }
        );

    private static byte[] Bytes(string coordinate) =>
        Coded.Bytes(coordinate, Coordinate) ?? throw new FormatException($"A coordinate has {Coordinate} bytes.");
}
