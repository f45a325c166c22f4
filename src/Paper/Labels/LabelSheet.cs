using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Labels;

/// <summary>A label of a job as PDF: next service, or key tag, with the code of the job's log book.</summary>
public static class LabelSheet
{
    private const double Margin = 2.5; // mm
    private const double LargestShare = 0.48; // of the width, for the code
    private const double LeastModule = 0.25; // mm: three dots of a printer with 300 dots an inch

    /// <summary>The file. The same job and day give the same bytes.</summary>
    /// <param name="kind">What it is for.</param>
    /// <param name="size">The label.</param>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="day">The day on which it is printed.</param>
    /// <param name="seal">What the shop signs with; null: the code is not signed.</param>
    /// <param name="before">The machine's jobs before this one.</param>
    /// <param name="place">Where on a sheet of labels, from 1, row by row; on a roll 1.</param>
    /// <param name="tongue">The language of the label; null: English.</param>
    /// <returns>Refused as <c>no-schedule</c>, <c>no-room</c>, <c>not-opened</c> or <c>no-such-place</c>.</returns>
    public static Answer<byte[]> Pdf(
        LabelKind kind,
        LabelSize size,
        JobState state,
        Workbench bench,
        DateOnly day,
        ShopSeal? seal = null,
        IEnumerable<JobState>? before = null,
        int place = 1,
        Tongue? tongue = null
    )
    {
        var said = tongue ?? Tongue.English;
        var places = size.Sheet?.Count ?? 1;
        if (place < 1 || place > places)
            return Answer<byte[]>.Refuse(
                "no-such-place",
                $"There is no label {place} on a sheet of {size.Name}: 1 to {places} are."
            );
        var lines = LabelText.Of(kind, state, bench, Outlook.Of(state, bench, before ?? []));
        if (lines.Refusal is { } nothing)
            return Answer<byte[]>.Refuse(nothing.Key, nothing.Because);
        var code = SheetEnd.Code(state, bench.Workshop.Id, LogBookFile.Head(state, bench), seal).Drawing!;
        var side = Math.Min(size.Height - 2 * Margin, size.Width * LargestShare);
        if (side / code.Width < LeastModule)
            return Answer<byte[]>.Refuse(
                "no-room",
                $"The label {size.Name} has no room for the code: its squares would be {side / code.Width:0.00} mm, {LeastModule:0.00} mm can be scanned. Take a larger one of {LabelSize.Names}."
            );
        var room = size.Width - 3 * Margin - side;
        var text = LabelLayout.Of(
            [.. lines.Certain.Select(l => (l.Text.In(said), l.Face))],
            LabelSize.Points(Margin),
            LabelSize.Points(room),
            LabelSize.Points(size.Height - 2 * Margin),
            size
        );
        return text.Refusal is { } full
            ? Answer<byte[]>.Refuse(full.Key, full.Because)
            : File(Title(kind, state), size, bench, day, place, text.Certain, code, side, said);
    }

    private static Sentence Title(LabelKind kind, JobState state) =>
        kind is LabelKind.Key ? (Sentence)$"Key tag, job {state.Job}" : (Sentence)$"Next service, job {state.Job}";

    private static byte[] File(
        Sentence title,
        LabelSize size,
        Workbench bench,
        DateOnly day,
        int place,
        Cell text,
        Drawing code,
        double side,
        Tongue tongue
    )
    {
        using var document = PdfFile.New(title, bench.Workshop.Name, day, tongue);
        var tags = UAManager.ForDocument(document).StructureBuilder;
        var (width, height) = size.Sheet is { Paper: var paper }
            ? (paper.Width, paper.Height)
            : (LabelSize.Points(size.Width), LabelSize.Points(size.Height));
        var page = document.AddPage(
            new PdfPage { Width = XUnitPt.FromPoint(width), Height = XUnitPt.FromPoint(height) }
        );
        using (var canvas = XGraphics.FromPdfPage(page))
        {
            var (left, top) = Corner(size, place, width, height);
            var middle = top + (LabelSize.Points(size.Height) - text.Height) / 2;
            foreach (var line in text.Lines)
            {
                tags.BeginElement(PdfBlockLevelElementTag.Paragraph);
                canvas.DrawString(
                    $"{line.Text} ",
                    line.Face.Font,
                    XBrushes.Black,
                    left + text.X,
                    middle + line.Face.Size
                );
                tags.End();
                middle += line.Face.Leading;
            }
            var at = new XPoint(
                left + LabelSize.Points(size.Width - Margin - side),
                top + LabelSize.Points((size.Height - side) / 2)
            );
            var points = LabelSize.Points(side);
            tags.BeginElement(
                PdfIllustrationElementTag.Figure,
                code.Label.In(tongue),
                new XRect(at, new XSize(points, points))
            );
            PdfPen.Draw(canvas, code, tongue, at.X, at.Y, points / code.Width);
            tags.End();
        }
        return PdfFile.Saved(document, day);
    }

    private static (double Left, double Top) Corner(LabelSize size, int place, double width, double height)
    {
        if (size.Sheet is not { } grid)
            return (0, 0);
        var (label, tall) = (LabelSize.Points(size.Width), LabelSize.Points(size.Height));
        return (
            (width - grid.Columns * label) / 2 + (place - 1) % grid.Columns * label,
            (height - grid.Rows * tall) / 2 + (place - 1) / grid.Columns * tall
        );
    }
}
