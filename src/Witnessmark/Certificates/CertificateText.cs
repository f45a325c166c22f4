using System.Globalization;
using System.Security.Cryptography.X509Certificates;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Certificates;

/// <summary>The shop's certificates, for people and for programs.</summary>
internal static class CertificateText
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static IEnumerable<string> Lines(Authority authority, X509Certificate2 server, DateTimeOffset now) =>
        [
            $"authority    {authority.Name}",
            $"fingerprint  {authority.Certificate.Fingerprint} (SHA-256)",
            $"valid until  {Until(authority.Certificate, now)}",
            $"vouches for  {Limits(authority)}",
            $"server       {string.Join(", ", ServerNames.Of(server).All)}",
            $"valid until  {Until(server, now)}",
        ];

    public static string Object(Authority authority, X509Certificate2 server, DateTimeOffset now) =>
        new JsonObject
        {
            ["authority"] = Facts(authority.Certificate, now, ("name", authority.Name)),
            ["server"] = Facts(
                server,
                now,
                ("names", new JsonArray([.. ServerNames.Of(server).All.Select(n => (JsonNode)n)]))
            ),
        }.ToJsonString(Readable);

    /// <summary>A day, with the days that are left.</summary>
    public static string Until(X509Certificate2 certificate, DateTimeOffset now) =>
        certificate.DaysLeft(now) is >= 0 and var left
            ? $"{Day(certificate)}, {left} days left"
            : $"{Day(certificate)}: it has run out";

    private static string Limits(Authority authority) =>
        NameLimits.Of(authority.Certificate) is { } limits
            ? $"{string.Join(", ", limits.Domains)}, private addresses"
            : "any name: it was not made by this program";

    private static JsonObject Facts(
        X509Certificate2 certificate,
        DateTimeOffset now,
        (string Name, JsonNode Value) own
    ) =>
        new()
        {
            [own.Name] = own.Value,
            ["fingerprint"] = certificate.Fingerprint,
            ["validUntil"] = certificate.Until,
            ["daysLeft"] = certificate.DaysLeft(now),
        };

    private static string Day(X509Certificate2 certificate) =>
        certificate.Until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
