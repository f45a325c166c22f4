using System.Text.RegularExpressions;
using Markdig;

namespace Witnessmark.HandbookPages;

/// <summary>
/// A written page as a piece of HTML that the client puts under its own heading. Before it, in a comment, stands the request of the
/// page's worked example. It is made when the client is built, so that no browser has to load a reader of Markdown.
/// </summary>
public static partial class PageFragment
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().Build();

    /// <summary>Makes the piece.</summary>
    /// <param name="page">The page as it is written, Markdown.</param>
    public static string Of(string page)
    {
        var example = Given().Match(page);
        var body = Comment().Replace(Heading().Replace(page, ""), "");
        var html = Markdown.ToHtml(body, Pipeline);
        return example.Success ? $"<!--example\n{example.Groups[1].Value.Trim()}\n-->\n{html}" : html;
    }

    [GeneratedRegex(@"^```json given\s*$(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Given();

    [GeneratedRegex(@"<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    // the screen has its own
    [GeneratedRegex(@"\A# .*$", RegexOptions.Multiline)]
    private static partial Regex Heading();
}
