using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Certificates;

/// <summary>How the page looks: paper and ink as the bench has them, by light and by dark. Text has a contrast of 7:1 or more.</summary>
internal static class TrustStyle
{
    public const string Css = """

        @font-face { font-family: "Atkinson Hyperlegible Next"; src: url("/fonts/atkinson-hyperlegible-next.woff2") format("woff2"); font-weight: 200 800; font-display: swap; }
        :root { color-scheme: light dark; --paper: #f3f2ee; --card: #fff; --ink: #1a1f23; --soft: #454d53; --line: #d5d3cb; --steel: #c3c9cd; --out: #a3160f; }
        @media (prefers-color-scheme: dark) {
          :root { --paper: #14171a; --card: #1f2428; --ink: #f1efe9; --soft: #bcc3c8; --line: #363c41; --steel: #59626a; --out: #ff7a70; }
        }
        * { box-sizing: border-box; }
        html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
        body { margin: 0; background: var(--paper); color: var(--ink); font: 1.0625rem/1.45 "Atkinson Hyperlegible Next", system-ui, sans-serif; font-variant-numeric: tabular-nums; overflow-wrap: break-word; }
        main { max-width: 44rem; margin: 0 auto; padding: 22px 18px 48px; display: flex; flex-direction: column; gap: 16px; }
        header { display: flex; gap: 14px; align-items: center; }
        header svg { flex: none; }
        header rect { fill: var(--steel); }
        header path { stroke: var(--ink); stroke-width: 3; fill: none; }
        h1 { font-size: 1.625rem; line-height: 1.15; margin: 0; letter-spacing: -0.01em; text-wrap: balance; }
        h2 { font-size: 1.1875rem; line-height: 1.25; margin: 14px 0 0; }
        p, ol, dl, dd { margin: 0; }
        ol { padding-inline-start: 1.5em; display: flex; flex-direction: column; gap: 10px; }
        dt { font-weight: 650; margin-top: 12px; }
        .soft { color: var(--soft); }
        .caution { border-inline-start: 5px solid var(--ink); border-radius: 4px; padding: 2px 0 2px 12px; }
        .btn, summary { display: flex; align-items: center; min-height: 56px; padding: 8px 18px; border-radius: 12px; font-size: 1.1875rem; font-weight: 650; line-height: 1.15; cursor: pointer; }
        .btn { justify-content: center; text-align: center; text-decoration: none; background: var(--ink); color: var(--paper); border: 2px solid var(--ink); }
        .devices { display: flex; flex-direction: column; gap: 10px; }
        details { background: var(--card); border: 2px solid var(--steel); border-radius: 12px; }
        details[open] { border-color: var(--ink); }
        summary { list-style: none; justify-content: space-between; gap: 12px; }
        summary::-webkit-details-marker { display: none; }
        summary::after { content: "+"; font-size: 1.5rem; font-weight: 400; }
        details[open] > summary::after { content: "−"; }
        .inside { padding: 2px 18px 18px; }
        .print { background: var(--card); border: 2px solid var(--ink); border-radius: 12px; padding: 14px 18px; display: flex; flex-direction: column; gap: 8px; }
        .print h2 { margin: 0; }
        .hash { font-family: ui-monospace, monospace; font-size: 1.0625rem; line-height: 1.6; max-width: 24.5ch; overflow-wrap: normal; }
        .code { width: 190px; max-width: 100%; background: #fff; border-radius: 8px; }
        .code path { fill: #000; }
        :focus-visible { outline: 3px solid var(--ink); outline-offset: 2px; }

        """;

    /// <summary>What the page may do: show itself in our own font. No script runs, no other style counts.</summary>
    public static string Policy { get; } =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Css)))}'; font-src 'self'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
}
