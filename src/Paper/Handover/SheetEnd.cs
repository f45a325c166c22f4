using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The end of the sheet: who released, who received, and the code that proves the log book.</summary>
internal static class SheetEnd
{
    private const double PlainWidth = 84;
    private const double Gutter = 14;
    private const double SignedWidth = 81 * 3 * 72.0 / 150; // 81 modules, three dots each in a scan of 150 dpi

    /// <summary>The code, at the right edge.</summary>
    public static Cell Code(JobState state, string workshop, string head, ShopSeal? seal)
    {
        var text = seal is null ? CodeText(state, head) : LogBookFile.Signature(state.Job, workshop, head, seal);
        var width = seal is null ? PlainWidth : SignedWidth;
        Sentence label = seal is null
            ? (Sentence)$"Code: seal of the log book of job {state.Job}"
            : (Sentence)$"Code: signed seal of the log book of job {state.Job}";
        return Cell.Of(Pages.Width - width, width, QrDrawing.Of(text, label));
    }

    /// <summary>Cautions, signatures and what the code is, with the code at their side.</summary>
    public static void Write(Pages pages, JobState state, string workshop, string head, ShopSeal? seal)
    {
        var code = Code(state, workshop, head, seal);
        var width = code.X - Gutter;
        pages.Beside(
            $"Before you ride",
            [
                [BeforeYouRide.Column(state, width)],
                [Signature(0, $"released by", Name(state)), Signature(200, $"received by", Sentence.Empty)],
                [Cell.Of(0, width, (Proof(state, head, seal), Typeface.Aside with { Size = 7.5 }))],
            ],
            code
        );
        pages.End();
    }

    /// <summary>What an unsigned code holds: the job and the seal of its log book.</summary>
    public static string CodeText(JobState state, string head) => $"witnessmark job:{state.Job} log-book-sha256:{head}";

    private static Sentence Proof(JobState state, string head, ShopSeal? seal) =>
        seal is null
            ? (Sentence)
                $"The log book of job {state.Job} is inside this PDF as log-book.json. The code holds its seal: {head[..8]} … {head[^8..]}."
            : (Sentence)
                $"The log book of job {state.Job} is inside this PDF as log-book.json. The code holds its seal: {head[..8]} … {head[^8..]}, signed with the workshop's key {seal.Key.Id}.";

    private static Sentence Name(JobState state) => SheetHead.Released(state) ? state.Release!.Names : Sentence.Empty;

    internal static Cell Signature(double x, Sentence what, Sentence name)
    {
        const double width = 160;
        return Cell.Later(0, width, tongue => Signature(x, what, name.In(tongue)));
    }

    private static Cell Signature(double x, Sentence what, string name)
    {
        const double width = 160;
        var face = new Typeface(9);
        var shown = Cell.Set(0, width, [(name, face)]).Lines.Select(l => l.Text).ToList();
        var top = 30 + (shown.Count > 3 ? (shown.Count - 3) * face.Leading : 0);
        var shapes = new List<Shape> { new Line(0, top + 4, width, top + 4, Ink.Full, 0.7) };
        shapes.AddRange(
            shown.Select(
                (text, i) =>
                    new Words(
                        0,
                        top - (shown.Count - 1 - i) * face.Leading,
                        Sentence.Of(text),
                        9,
                        Ink.Full,
                        true,
                        false
                    )
            )
        );
        shapes.Add(new Words(0, top + 15, what, 8, Ink.Soft, false, false));
        return Cell.Of(x, width, new Drawing(width, top + 18, what, shapes));
    }
}
