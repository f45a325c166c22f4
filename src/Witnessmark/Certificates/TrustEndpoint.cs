using System.Security.Cryptography.X509Certificates;
using Witnessmark.Languages;
using Witnessmark.Serve;

namespace Witnessmark.Certificates;

/// <summary>The page that leads to trust, and the certificate that it is about. Never its key.</summary>
internal static class TrustEndpoint
{
    // as Android, iOS and Firefox know a certificate of an authority
    private const string CertificateType = "application/x-x509-ca-cert";

    /// <summary>Puts them where they are; with a certificate of a public authority there is nothing to trust.</summary>
    public static void MapTrust(this WebApplication app, Listening listening, ShownCertificate? shown)
    {
        if (shown is null)
            return;
        if (listening.Certificate is not null)
        {
            app.MapGet("/trust", () => Results.Redirect("/"));
            return;
        }
        app.MapGet("/trust", (HttpContext context, DataFolder data) => Page(context, data, app, shown));
        app.MapGet(TrustPage.Download, (DataFolder data) => Certificate(data));
    }

    private static IResult Page(HttpContext context, DataFolder data, WebApplication app, ShownCertificate shown)
    {
        if (CertificateFolder.Authority(data.Path) is not { } authority)
            return Missing();
        context.Response.Headers.ContentSecurityPolicy = TrustPage.Policy;
        var request = context.Request;
        var (plain, https) = (Listening.PortOf(app.Urls, "http"), Listening.PortOf(app.Urls, "https"));
        var outside = ServerNames.Of(shown.Server).FromOutside;
        var here =
            PlainHttp.IsOfThisComputer(context) && outside.Count > 0 ? $"http://{outside[0]}:{plain}/trust" : null;
        var page = TrustPage.Html(
            authority,
            $"https://{request.Host.Host}:{https}/",
            here,
            request.Headers.UserAgent,
            AskedTongue.Of(request)
        );
        return Results.Text(page, "text/html", System.Text.Encoding.UTF8);
    }

    private static IResult Certificate(DataFolder data) =>
        CertificateFolder.Authority(data.Path) is { } authority
            ? Results.Bytes(authority.Certificate.Export(X509ContentType.Cert), CertificateType)
            : Missing();

    private static IResult Missing() => Failure.Of(404, "The shop has no authority of its own.");
}
