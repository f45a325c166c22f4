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
    /// <param name="tongue">Whoever reads it.</param>
    public static string Html(Authority authority, string shop, string? here, string? agent, Tongue tongue)
    {
        string Say(Sentence words) => Escaped(words.In(tongue));
        var page = new StringBuilder();
        page.Append(
            CultureInfo.InvariantCulture,
            $"""
            <!doctype html>
            <html lang="{tongue.Code}">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>{Say($"Trust this shop")}</title>
            <link rel="icon" href="data:,">
            <style>{TrustStyle.Css}</style>
            </head>
            <body>
            <main>
            <header>{Mark}<h1>{Say($"Trust this shop on your device")}</h1></header>
            <p>{Say(Why)} <b>{Escaped(authority.Name)}</b></p>
            <p class="caution"><b>{Say($"Only for a device that you work with here.")}</b> {Say(Caution)}</p>
            {(here is null ? "" : AtTheShop(authority, here, Say))}
            <h2>1. {Say($"Download it")}</h2>
            <a class="btn" href="{Download}">{Say($"Download the certificate")}</a>
            <h2>2. {Say($"Trust it")}</h2>
            <div class="devices">{Guides(agent, Say)}</div>
            <h2>3. {Say($"Open the shop")}</h2>
            <a class="btn" href="{Escaped(shop)}">{Say($"Open the shop")}</a>
            <p class="soft">{Say(Warned)}</p>
            <h2>{Say($"What you trust, and what not")}</h2>
            <p>{Say(Limits(authority))} {Say(Key)}</p>
            <p>{Say(Leaving)}</p>
            </main>
            </body>
            </html>

            """
        );
        return page.ToString();
    }

    private static Sentence Why =>
        $"The bench keeps your readings on the device and works without network. Browsers allow that only over a connection that nobody can listen to. For that the device has to know the shop’s own authority, once:";

    private static Sentence Caution =>
        $"A device that trusts an authority believes what it vouches for. Compare the fingerprint before you switch the trust on: it shows that the certificate is the shop’s, and nobody changed it on its way.";

    private static Sentence Warned =>
        $"If the browser warns of the connection, the trust is not there yet. Do not click the warning away: go back to step 2.";

    private static Sentence Key =>
        $"Its private key lies on the shop’s computer and in the shop’s backups. Whoever stole it could pass for the shop towards this device; not every system heeds the limit, so let only devices of the workshop trust it.";

    private static Sentence Leaving =>
        $"When you leave the shop, give the device away, or hear that the key was lost, let the bench send what it still holds, and take the trust away again.";

    private static string Guides(string? agent, Func<Sentence, string> say)
    {
        var likely = TrustGuide.For(agent);
        return string.Concat(TrustGuide.All.Select(g => Guide(g, g == likely, say)));
    }

    private static string Guide(TrustGuide guide, bool open, Func<Sentence, string> say) =>
        $"""
            <details name="device"{(open ? " open" : "")}>
            <summary>{say(guide.Device)}</summary>
            <div class="inside">
            <ol>{string.Concat(guide.Steps.Select(s => $"<li>{say(s)}</li>"))}</ol>
            <dl>
            <dt>{say($"Compare the fingerprint")}</dt>
            <dd>{say(guide.Compare)} {say(Same)}</dd>
            <dt>{say($"Take the trust away again")}</dt>
            <dd>{say(guide.Away)}</dd>
            </dl>
            </div>
            </details>

            """;

    private static Sentence Same =>
        $"Its SHA-256 has to be, pair by pair, the one that the shop’s computer says: this page opened there, or {new AsItStands("witnessmark certificate show")}. If one pair differs, do not trust it and tell the shop.";

    private static string AtTheShop(Authority authority, string here, Func<Sentence, string> say) =>
        $"""
            <section class="print">
            <h2>{say($"This is the shop’s computer")}</h2>
            <p>{say($"On the device open this address, or let its camera read the code:")} <b>{Escaped(here)}</b></p>
            {TrustCode.Svg(here, say($"QR code of the address"))}
            <p>{say($"The fingerprint that the device has to show (SHA-256):")}</p>
            <p class="hash">{authority.Certificate.Fingerprint.Replace(":", ":<wbr>", StringComparison.Ordinal)}</p>
            </section>
            """;

    private static Sentence Limits(Authority authority) =>
        NameLimits.Of(authority.Certificate) is { } limits
            ? (Sentence)
                $"The authority can vouch only for addresses of private networks and for the domains {string.Join(", ", limits.Domains)}: not for your bank, your mail, or any other site of the internet."
            : (Sentence)$"The authority can vouch for any site.";

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);
}
