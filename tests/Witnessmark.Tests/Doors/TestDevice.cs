using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Witnessmark.Doors;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Tests.Doors;

/// <summary>A device with a key, as a browser makes one.</summary>
internal sealed class TestDevice(string id) : IDisposable
{
    private readonly ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

    public string Id => id;

    public string X => Coordinate(key.ExportParameters(false).Q.X!);

    public string Y => Coordinate(key.ExportParameters(false).Q.Y!);

    public KeptDevice Described(bool shared = true) => new(id, $"Tablet {id}", X, Y, shared, "", default);

    /// <summary>ES256 over the statement, R and S side by side: what Web Crypto makes.</summary>
    public string Sign(string deed, string nonce, string person = "") =>
        Base64Url.EncodeToString(
            key.SignData(
                Encoding.UTF8.GetBytes($"witnessmark door 1\n{deed}\n{nonce}\n{id}\n{person}"),
                HashAlgorithmName.SHA256,
                DSASignatureFormat.IeeeP1363FixedFieldConcatenation
            )
        );

    public DeviceProof Proof(Door door, string deed, string person = "")
    {
        var nonce = door.NewNonce();
        return new(id, nonce, Sign(deed, nonce, person));
    }

    public void Dispose() => key.Dispose();

    private static string Coordinate(byte[] bytes) => Base64Url.EncodeToString(bytes);
}
