using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Paper.Record;

/// <summary>How the record looks: on a phone, at a desk, in the dark and on paper. Text has a contrast of 7:1 or more.</summary>
internal static class RecordStyle
{
    public const string Css = """

        :root { color-scheme: light dark; --paper: #fff; --card: #fff; --ink: #1a1f23; --soft: #454d53; --line: #d5d3cb; --steel: #c3c9cd; --steel2: #dfe3e5; --ok: #1a1f23; --out: #8d120c; --unsure: #483778; }
        @media screen and (prefers-color-scheme: dark) {
          :root { --paper: #14171a; --card: #14171a; --ink: #f1efe9; --soft: #bcc3c8; --line: #363c41; --steel: #59626a; --steel2: #343a40; --ok: #f1efe9; --out: #ffb4ad; --unsure: #d3c8fb; }
        }
        * { box-sizing: border-box; }
        html { -webkit-text-size-adjust: 100%; }
        body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
        main { max-width: 52rem; margin: 0 auto; padding: 1rem 1.1rem 3rem; overflow-wrap: anywhere; }
        h1 { font-size: 1.7rem; line-height: 1.2; margin: 0.2rem 0; }
        h2 { font-size: 1.15rem; margin: 1.8rem 0 0.4rem; break-after: avoid; }
        p { margin: 0.3rem 0; }
        .soft { color: var(--soft); }
        .loud { font-weight: 700; }
        .strip svg { height: 1.4rem; max-width: 100%; }
        table { border-collapse: collapse; width: 100%; }
        caption { text-align: start; color: var(--soft); }
        th, td { text-align: start; vertical-align: top; padding: 0.45rem 0.6rem 0.45rem 0; border-bottom: 1px solid var(--line); }
        thead th { color: var(--soft); font-weight: 400; }
        tr { break-inside: avoid; }
        td p, th p { margin: 0; }
        th p.soft { font-weight: 400; }
        td.mark, th.mark { width: 1.6rem; }
        td.mark svg { width: 0.9rem; }
        td.rule { width: 9rem; }
        td.rule svg { width: 100%; max-width: 12rem; }
        .left { font-weight: 700; }
        .photographs { display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: 1rem; }
        figure { margin: 0; break-inside: avoid; }
        figure img { width: 100%; height: auto; display: block; }
        .code svg { width: 11rem; max-width: 100%; background: #fff; --ink: #1a1f23; }
        .hash { font-family: ui-monospace, monospace; font-size: 0.85rem; }
        @media screen and (max-width: 38rem) {
          table, tbody, tr, td, th { display: block; border: 0; padding: 0; }
          thead { display: none; }
          tr { position: relative; border-bottom: 1px solid var(--line); padding: 0.6rem 0 0.6rem 1.8rem; }
          td.mark { position: absolute; inset-inline-start: 0; top: 0.7rem; }
          td[data-label]::before { content: attr(data-label); display: block; color: var(--soft); font-size: 0.85rem; font-weight: 400; margin-top: 0.3rem; }
          td.rule { width: auto; }
        }
        @media print {
          :root { color-scheme: light; }
          body { font-size: 9.5pt; }
          main { max-width: none; padding: 0; }
          h2 { margin-top: 1rem; }
          .photographs { grid-template-columns: repeat(3, 1fr); }
        }

        """;

    /// <summary>What the page may do: show itself. No script runs, nothing is asked of anybody, no other style counts.</summary>
    public static string Policy { get; } =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Css)))}'; img-src data:; base-uri 'none'; form-action 'none'";
}
