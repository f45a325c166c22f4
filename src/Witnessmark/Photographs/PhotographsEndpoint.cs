using System.Security.Cryptography;
using Witnessmark.Bench.Photographs;
using Witnessmark.Serve;

namespace Witnessmark.Photographs;

/// <summary>
/// Photographs come and go by the hash of their bytes. What is not a plain picture is refused, never mended: a picture without
/// its metadata has another hash than the one that stands in the ledger.
/// </summary>
public static class PhotographsEndpoint
{
    /// <summary><c>GET /api/photographs/{sha256}</c></summary>
    public static IResult Get(string sha256, ServedShop shop) =>
        shop.Place.Photograph(sha256) is { } file
            ? Results.File(file, Picture.MediaType)
            : Failure.Of(
                404,
                "The shop has no photograph of that hash. Has the device that took it met the shop since?"
            );

    /// <summary><c>PUT /api/photographs/{sha256}</c>: 201 when it was put on disk, 200 when it was there.</summary>
    public static async Task<IResult> Put(string sha256, HttpRequest request, ServedShop shop, CancellationToken gone)
    {
        if (!Picture.IsHash(sha256))
            return Failure.Of(400, "The name of a photograph is its SHA-256: 64 digits of lower-case hex.");
        if (await Body(request, gone) is not { } file)
            return Failure.Of(413, $"A photograph has at most {Picture.MostBytes} bytes.");
        if (Convert.ToHexStringLower(SHA256.HashData(file)) != sha256)
            return Failure.Of(
                409,
                "What came has another hash than its name: it was changed on the way. Send it again."
            );
        if (JpegFile.Read(file) is { Value: { WasPlain: false } })
            return Failure.Of(
                400,
                "The picture carries more than itself (place, time or device that took it). The bench strips that before it sends."
            );
        var stored = StoredPicture.Of(file);
        if (stored.Refusal is { } refusal)
            return Failure.Of(400, refusal.Because);
        return Results.StatusCode(shop.Place.Put(stored.Certain) ? 201 : 200);
    }

    /// <summary>All of it, or null when it is longer than a photograph may be.</summary>
    private static async Task<byte[]?> Body(HttpRequest request, CancellationToken gone)
    {
        if (request.ContentLength > Picture.MostBytes)
            return null;
        using var all = new MemoryStream();
        var piece = new byte[64 * 1024];
        while (await request.Body.ReadAsync(piece, gone) is > 0 and var count)
        {
            if (all.Length + count > Picture.MostBytes)
                return null;
            all.Write(piece, 0, count);
        }
        return all.ToArray();
    }
}
