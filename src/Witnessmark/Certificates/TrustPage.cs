using System.Globalization;
using System.Net;
using System.Text;

namespace Witnessmark.Certificates;

/// <summary>The page that leads a person through trusting the shop's authority on a device: no script, nothing but itself.</summary>
public static class TrustPage
{
    /// <summary>Where the certificate is fetched; systems keep it under this name.</summary>
    public const string Download = "/trust/witnessmark-authority.crt";

    private const string Mark = """
        <svg viewBox="0 0 14 22" width="28" height="44" aria-hidden="true"><rect width="14" height="10" rx="2"/><rect y="12" width="14" height="10" rx="2"/><path d="M9.5 0 4.5 22"/></svg>
        """;

    /// <summary>What a server says about the page.</summary>
    public static string Policy => TrustStyle.Policy;

    /// <summary>The page.</summary>
    /// <param name="authority">The shop's authority.</param>
    /// <param name="shop">Where the shop is opened with HTTPS.</param>
    /// <param name="here">Address of this page for devices, where it is read at the shop's own computer; else null. Only there it says the
    /// fingerprint: a page that came over the network could have been changed together with the certificate.</param>
    /// <param name="agent">What the browser says of itself.</param>
    public static string Html(Authority authority, string shop, string? here, string? agent)
    {
        var page = new StringBuilder();
        page.Append(
            CultureInfo.InvariantCulture,
            $"""
            <!doctype html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>Trust this shop</title>
            <link rel="icon" href="data:,">
            <style>{TrustStyle.Css}</style>
            </head>
            <body>
            <main>
            <header>{Mark}<h1>Trust this shop on your device</h1></header>
            <p>The bench keeps your readings on the device and works without network. Browsers allow that only over a connection that nobody can listen to. For that the device has to know the shop’s own authority, once: <b>{Escaped(
                authority.Name
            )}</b>.</p>
            <p class="caution"><b>Only for a device that you work with here.</b> A device that trusts an authority believes what it vouches for. Compare the fingerprint before you switch the trust on: it shows that the certificate is the shop’s, and nobody changed it on its way.</p>
            {(here is null ? "" : AtTheShop(authority, here))}
            <h2>1. Download it</h2>
            <a class="btn" href="{Download}">Download the certificate</a>
            <h2>2. Trust it</h2>
            <div class="devices">{Guides(agent)}</div>
            <h2>3. Open the shop</h2>
            <a class="btn" href="{Escaped(shop)}">Open the shop</a>
            <p class="soft">If the browser warns of the connection, the trust is not there yet. Do not click the warning away: go back to step 2.</p>
            <h2>What you trust, and what not</h2>
            <p>{Limits(
                authority
            )} Its private key lies on the shop’s computer and in the shop’s backups. Whoever stole it could pass for the shop towards this device; not every system heeds the limit, so let only devices of the workshop trust it.</p>
            <p>When you leave the shop, give the device away, or hear that the key was lost, let the bench send what it still holds, and take the trust away again.</p>
            </main>
            </body>
            </html>

            """
        );
        return page.ToString();
    }

    private static string Guides(string? agent)
    {
        var likely = TrustGuide.For(agent);
        return string.Concat(TrustGuide.All.Select(g => Guide(g, g == likely)));
    }

    private static string Guide(TrustGuide guide, bool open) =>
        $"""
            <details name="device"{(open ? " open" : "")}>
            <summary>{guide.Device}</summary>
            <div class="inside">
            <ol>{string.Concat(guide.Steps.Select(s => $"<li>{Escaped(s)}</li>"))}</ol>
            <dl>
            <dt>Compare the fingerprint</dt>
            <dd>{Escaped(
                guide.Compare
            )} Its SHA-256 has to be, pair by pair, the one that the shop’s computer says: this page opened there, or <b>witnessmark certificate show</b>. If one pair differs, do not trust it and tell the shop.</dd>
            <dt>Take the trust away again</dt>
            <dd>{Escaped(guide.Away)}</dd>
            </dl>
            </div>
            </details>

            """;

    private static string AtTheShop(Authority authority, string here) =>
        $"""
            <section class="print">
            <h2>This is the shop’s computer</h2>
            <p>On the device open <b>{Escaped(here)}</b>, or let its camera read this:</p>
            {TrustCode.Svg(here)}
            <p>The fingerprint that the device has to show (SHA-256):</p>
            <p class="hash">{authority.Certificate.Fingerprint.Replace(":", ":<wbr>", StringComparison.Ordinal)}</p>
            </section>
            """;

    private static string Limits(Authority authority) =>
        NameLimits.Of(authority.Certificate) is { } limits
            ? $"The authority can vouch only for addresses of private networks and for the domains {Escaped(string.Join(", ", limits.Domains))}: not for your bank, your mail, or any other site of the internet."
            : "The authority can vouch for any site.";

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);
}
