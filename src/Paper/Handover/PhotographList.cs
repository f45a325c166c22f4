using PdfSharp.Drawing;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The job's photographs: small, each with what it shows, who took it when, and the hash that tells whether it is the one that was taken.</summary>
internal static class PhotographList
{
    private const double WordsAt = 160;
    private const double PictureWidth = 148;

    public static void Write(Pages pages, JobState state, Func<string, byte[]?> pictures)
    {
        var rows = state.Photographs.Select(p => Row(p, state, pictures)).ToList();
        if (rows.Count == 0)
            return;
        pages.Begin($"Photographs", pages.HeightOf(rows[0]));
        foreach (var row in rows)
            pages.Row(row, 3.5);
        pages.End();
    }

    private static IReadOnlyList<Cell> Row(Photograph photograph, JobState state, Func<string, byte[]?> pictures)
    {
        var picture = photograph.Picture;
        return
        [
            pictures(picture.Sha256) is { } file
                ? Cell.Of(0, PictureWidth, XImage.FromStream(new MemoryStream(file)))
                : Cell.Of(0, PictureWidth, ($"The picture is not at the shop.", Typeface.Aside)),
            Cell.Of(
                WordsAt,
                Pages.Width - WordsAt,
                (Sentence.Of(photograph.Shows), Typeface.Strong),
                (PointWords.Of(photograph, state), Typeface.Body),
                ($"{photograph.Entry.By}, {photograph.Entry.At}", Typeface.Body),
                ($"{picture.Width} × {picture.Height}, SHA-256 {picture.Sha256}", Typeface.Aside)
            ),
        ];
    }
}
