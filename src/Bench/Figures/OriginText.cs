using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>Reads <c>origin = "maker: handbook p. 87"</c>.</summary>
internal static class OriginText
{
    private const string Right =
        "\"maker: DOCUMENT PLACE\", \"law: JURISDICTION, CLAUSE\", \"standard: NUMBER\", \"shop\" or \"common practice\"";

    private static readonly Origin None = new(OriginKind.CommonPractice, "");

    /// <summary>The origin of a figure or of a line of the schedule.</summary>
    /// <param name="table">Where the key <c>origin</c> stands.</param>
    /// <param name="documents">Names of the sheet's documents.</param>
    public static Origin Read(TomlTable table, IReadOnlyCollection<string> documents)
    {
        var written = table.Text("origin").Trim();
        var colon = written.IndexOf(':');
        var (who, place) = colon < 0 ? (written, "") : (written[..colon].Trim(), written[(colon + 1)..].Trim());
        return (who, colon < 0) switch
        {
            ("shop", true) => new(OriginKind.Shop, ""),
            ("common practice", true) => None,
            ("maker", false) => Maker(table, place, documents),
            ("law", false) => Law(table, place),
            ("standard", false) when place.Length > 0 => new(OriginKind.Standard, place),
            ("", true) => None, // missing or empty: noted already
            _ => Refused(table, written),
        };
    }

    private static Origin Maker(TomlTable table, string place, IReadOnlyCollection<string> documents)
    {
        var document = place.Split(' ')[0];
        if (!documents.Contains(document))
            table.Wrong(
                "origin",
                $"document \"{document}\", which the sheet does not have",
                documents.Count == 0
                    ? $"a table [documents.{document}] in the sheet"
                    : Nearest.InWords(document, documents)
            );
        else if (place.Length == document.Length)
            table.Wrong("origin", $"\"maker: {place}\" without a place in it", $"\"maker: {document} p. 87\"");
        return new(OriginKind.Maker, place);
    }

    private static Origin Law(TomlTable table, string place)
    {
        var comma = place.IndexOf(',');
        if (comma <= 0 || place[(comma + 1)..].Trim().Length == 0)
            table.Wrong("origin", $"\"law: {place}\" without jurisdiction or clause", "\"law: JURISDICTION, CLAUSE\"");
        return new(OriginKind.Law, place);
    }

    private static Origin Refused(TomlTable table, string written)
    {
        table.Wrong("origin", $"\"{written}\"", Right);
        return None;
    }
}
