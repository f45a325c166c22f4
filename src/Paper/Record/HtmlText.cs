using System.Globalization;
using System.Net;
using System.Text;

namespace Witnessmark.Paper.Record;

/// <summary>Builds a page; whatever people wrote is escaped here and nowhere else.</summary>
internal sealed class HtmlText(Tongue tongue)
{
    private readonly StringBuilder text = new();

    /// <summary>The language of the page.</summary>
    public Tongue Tongue => tongue;

    /// <summary>Markup of this program, as it is. Never anything that somebody wrote.</summary>
    public HtmlText Raw(string markup)
    {
        text.Append(markup).Append('\n');
        return this;
    }

    /// <summary>An element with text in it, read from the side its own letters ask for; nothing where there is no text.</summary>
    public HtmlText Said(string element, Sentence? sentence, string? look = null)
    {
        var said = sentence?.In(tongue);
        if (!string.IsNullOrWhiteSpace(said))
            text.Append(
                CultureInfo.InvariantCulture,
                $"<{element}{Look(look)} dir=\"auto\">{Escaped(said)}</{element}>\n"
            );
        return this;
    }

    /// <summary>Markup in an element, closed again.</summary>
    public HtmlText In(string element, Action inside, string? look = null)
    {
        text.Append(CultureInfo.InvariantCulture, $"<{element}{Look(look)}>");
        inside();
        text.Append(CultureInfo.InvariantCulture, $"</{element.Split(' ')[0]}>\n");
        return this;
    }

    /// <summary>A part with its heading and one paragraph for each line; nothing where there is no line.</summary>
    public HtmlText Part(Sentence heading, IEnumerable<(Sentence Line, bool Loud)> lines)
    {
        var all = lines.ToList();
        if (all.Count > 0)
            In(
                "section",
                () =>
                {
                    Said("h2", heading);
                    foreach (var (line, loud) in all)
                        Said("p", line, loud ? "loud" : null);
                }
            );
        return this;
    }

    /// <summary>The same with quiet lines.</summary>
    public HtmlText Part(Sentence heading, IEnumerable<Sentence> lines) => Part(heading, lines.Select(l => (l, false)));

    /// <summary>Text that can stand between tags and in quoted attributes; controls that HTML cannot hold are left out.</summary>
    public static string Escaped(string said) =>
        WebUtility.HtmlEncode(
            string.Concat(said.EnumerateRunes().Where(r => r.Value is '\n' or '\t' || !Rune.IsControl(r)))
        );

    public override string ToString() => text.ToString();

    private static string Look(string? look) => look is null ? "" : $" class=\"{look}\"";
}
