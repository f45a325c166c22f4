using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.Net.Http.Headers;

namespace Witnessmark.Serve;

/// <summary>The files of the workbench as they are: the client reads them with the same code as the server.</summary>
public static class WorkbenchFilesEndpoint
{
    /// <summary>
    /// <c>GET /api/workbench</c>. Devices ask with every entry they bring whether anything is new: with the entity tag of what they have
    /// (<c>If-None-Match</c>, RFC 9110, 13.1.2) the answer is 304 without a body.
    /// </summary>
    public static IResult Get(HttpRequest request, ServedShop shop, DataFolder data)
    {
        var text = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                Protocol = Api.Protocols.For(request),
                Ledger = shop.Ledger.Id,
                Files = shop.Files.Select(file => new { file.Name, file.Text }),
                Demo = !shop.Place.IsOfGroup && DemoShop.Is(data),
                shop.PutAway,
            },
            JsonSerializerOptions.Web
        );
        // weak: it may go out compressed or not
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(text))}\"", isWeak: true);
        return Results.Bytes(text, "application/json", entityTag: tag);
    }
}
