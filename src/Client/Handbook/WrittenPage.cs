using System.Text.RegularExpressions;
using Markdig;

namespace Witnessmark.Client.Handbook;

/// <summary>The written page of a calculation: what it says, and the request of its worked example.</summary>
/// <param name="Html">To be shown.</param>
/// <param name="Example">JSON, or null when the page has none.</param>
internal sealed partial record WrittenPage(string Html, string? Example)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();

    /// <summary>Fetches the page, which the device keeps; null when it is not there.</summary>
    public static async Task<WrittenPage?> Of(HttpClient http, string name)
    {
        try
        {
            return Read(await http.GetStringAsync($"handbook/{name}.txt"));
        }
        catch (HttpRequestException)
        {
            return null; // said on the screen; the calculation needs no page
        }
    }

    /// <summary>Reads a page as it is written.</summary>
    public static WrittenPage Read(string text)
    {
        var example = Given().Match(text);
        var body = Comment().Replace(Heading().Replace(text, ""), "");
        return new(Reachable(Markdown.ToHtml(body, Pipeline)), example.Success ? example.Groups[1].Value : null);
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

    [GeneratedRegex(@"^```json given\s*$(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Given();

    [GeneratedRegex(@"<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    // the screen has its own
    [GeneratedRegex(@"\A# .*$", RegexOptions.Multiline)]
    private static partial Regex Heading();
}
