using Witnessmark.Client.Device;

namespace Witnessmark.Client.Handbook;

/// <summary>The written page of a calculation: what it says, and the request of its worked example.</summary>
/// <param name="Html">To be shown.</param>
/// <param name="Example">JSON, or null when the page has none.</param>
internal sealed record WrittenPage(string Html, string? Example)
{
    private const string Begins = "<!--example\n";
    private const string Ends = "\n-->\n";

    /// <summary>Fetches the page, which the device keeps; null when it is not there.</summary>
    /// <remarks>That it is not there is said on the screen; the calculation needs no page.</remarks>
    public static async Task<WrittenPage?> Of(ShopLine line, string name) =>
        await line.Beside($"handbook/{name}.html") is { } text ? Read(text) : null;

    /// <summary>Reads a page as the build made it: the example in a comment, then what is shown.</summary>
    public static WrittenPage Read(string text)
    {
        var end = text.StartsWith(Begins, StringComparison.Ordinal) ? text.IndexOf(Ends, StringComparison.Ordinal) : -1;
        return end < 0
            ? new(Reachable(text), null)
            : new(Reachable(text[(end + Ends.Length)..]), text[Begins.Length..end]);
    }

    // what is wider than a phone scrolls by itself, with the keyboard too; drawings lie beside the page's text
    private static string Reachable(string html) =>
        html.Replace(
                "<table>",
                $"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{HandbookWords.Table}\"><table>"
            )
            .Replace("</table>", "</table></div>")
            .Replace("<pre>", "<pre tabindex=\"0\">")
            .Replace("src=\"drawings/", "src=\"handbook/drawings/");
}
