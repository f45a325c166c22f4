using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>A part of the sheet that is sentences under a heading, some of them loud; nothing where there are none.</summary>
internal static class LineList
{
    public static void Write(Pages pages, Sentence heading, IEnumerable<(Sentence Line, bool Loud)> lines)
    {
        List<(Sentence Line, bool Loud)> all = [.. lines];
        if (all.Count == 0)
            return;
        pages.Begin(heading, 20);
        foreach (var (line, loud) in all)
            pages.Row([Cell.Of(0, Pages.Width, (line, loud ? Typeface.Strong : Typeface.Body))], 1.5, false);
        pages.End();
    }
}
