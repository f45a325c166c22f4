using System.Xml.Linq;

namespace Witnessmark.Calc;

/// <summary>What the documentation comments of a class say: the summary and the titled parts of its remarks.</summary>
/// <param name="Summary">The first sentence or two.</param>
/// <param name="Parts">Formula, Units, Source, Valid when; in the order written.</param>
internal sealed record PageText(string Summary, IReadOnlyList<(string Title, string Text)> Parts)
{
    private static readonly Lazy<XDocument> Handbook = new(() =>
        XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Witnessmark.Handbook.xml"))
    );

    /// <summary>The page of a documented class of the handbook.</summary>
    /// <exception cref="InvalidOperationException">The class is not documented.</exception>
    public static PageText Of(Type page)
    {
        var member =
            Handbook
                .Value.Descendants("member")
                .FirstOrDefault(m => (string?)m.Attribute("name") == $"T:{page.FullName}")
            ?? throw new InvalidOperationException($"{page.FullName} has no documentation.");
        return new(
            Plain(member.Element("summary")!.Nodes()),
            [.. member.Elements("remarks").Elements("para").Select(Part)]
        );
    }

    private static (string, string) Part(XElement paragraph)
    {
        var title = paragraph.Element("b")!;
        return (title.Value.TrimEnd('.'), Plain(title.NodesAfterSelf()));
    }

    private static string Plain(IEnumerable<XNode> nodes) =>
        string.Join(
            ' ',
            string.Concat(nodes.Select(Plain)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        );

    private static string Plain(XNode node) =>
        node switch
        {
            XText text => text.Value,
            XElement { Name.LocalName: "see" } see => ((string?)see.Attribute("cref") ?? "").Split('.')[^1],
            XElement element => element.Value,
            _ => "",
        };
}
