using PdfSharp.Drawing;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Findings;

/// <summary>The findings of one urgency with their lines, sums and decisions.</summary>
internal static class EstimateTable
{
    /// <summary>Right edge of the amounts.</summary>
    public const double AmountRight = Pages.Width;

    private const double QuantityRight = 330;
    private const double PriceRight = 420;
    private const double ItemWidth = 270;
    private const double Indent = 12;
    private const int PicturesInRow = 3;
    private const double PictureWidth = 150;

    public static void Write(
        Pages pages,
        Urgency urgency,
        IReadOnlyList<Finding> findings,
        Func<string, byte[]?> pictures
    )
    {
        pages.Begin(Heading(urgency), 40, Columns());
        foreach (var finding in findings)
            Write(pages, finding, pictures);
        pages.End();
    }

    private static Sentence Heading(Urgency urgency) =>
        urgency switch
        {
            Urgency.BeforeRiding => $"To be put right before riding",
            Urgency.ByNextService => $"To be put right by the next service",
            _ => $"To keep an eye on",
        };

    private static void Write(Pages pages, Finding finding, Func<string, byte[]?> pictures)
    {
        pages.Gap(4);
        pages.Row([Cell.Of(0, Pages.Width, (Sentence.Of(finding.What), Typeface.Strong))], 2, false);
        foreach (var row in finding.Photographs.Chunk(PicturesInRow))
            pages.Row([.. row.Select((p, i) => Picture(p, i, pictures))], 2, false);
        if (finding.Estimate is { } estimate)
            Write(pages, estimate);
        else
            pages.Row([Cell.Of(Indent, Pages.Width - Indent, ($"No estimate was made.", Typeface.Body))], 1, false);
        Decision(pages, finding);
    }

    private static Cell Picture(Photograph photograph, int at, Func<string, byte[]?> pictures)
    {
        var x = Indent + at * (PictureWidth + 10);
        return pictures(photograph.Picture.Sha256) is { } file
            ? Cell.Of(x, PictureWidth, XImage.FromStream(new MemoryStream(file)))
            : Cell.Of(x, PictureWidth, ($"The picture is not at the shop.", Typeface.Aside));
    }

    private static void Write(Pages pages, Estimate estimate)
    {
        foreach (var part in estimate.Parts)
            Line(
                pages,
                Sentence.Of(part.Item),
                Sentence.Number(part.Quantity),
                Sentence.Number(part.Price.Number),
                Sentence.Number(part.Amount.Number)
            );
        if (estimate.Minutes > 0)
            Line(
                pages,
                $"Work",
                $"{estimate.Minutes} min",
                $"{Sentence.Number(estimate.Terms.Rate.Number)} / h",
                Sentence.Number(estimate.Work.Number)
            );
        foreach (var tax in estimate.Taxes)
            Line(
                pages,
                $"Tax, {Sentence.Number(tax.Percent.ToString())} % on {Sentence.Number(tax.Net.Number)}",
                Sentence.Empty,
                Sentence.Empty,
                Sentence.Number(tax.Tax.Number)
            );
        pages.Row(
            [
                Cell.Of(Indent, ItemWidth, ($"Total", Typeface.Strong)),
                Cell.AtRight(AmountRight, Sentence.Number(estimate.Total.ToString()), Typeface.Strong),
            ],
            1,
            false
        );
    }

    private static void Line(Pages pages, Sentence item, Sentence quantity, Sentence price, Sentence amount) =>
        pages.Row(
            [
                Cell.Of(Indent, ItemWidth, (item, Typeface.Body)),
                Cell.AtRight(QuantityRight, quantity, Typeface.Body),
                Cell.AtRight(PriceRight, price, Typeface.Body),
                Cell.AtRight(AmountRight, amount, Typeface.Body),
            ],
            1,
            false
        );

    private static void Decision(Pages pages, Finding finding)
    {
        if (FindingWords.Decided(finding) is not { } decided)
        {
            pages.Row([Cell.Of(Indent, 230, Choice())], 3);
            return;
        }
        var face = finding.DeclinedBeforeRiding ? Typeface.Strong : Typeface.Body;
        var signature = finding.Decision!.Signature;
        const double signed = 90;
        var words = Cell.Of(Indent, Pages.Width - Indent - (signature is null ? 0 : signed + 10), (decided, face));
        pages.Row(
            signature is null
                ? [words]
                : [words, Cell.Of(AmountRight - signed, signed, SignatureDrawing.Of(signature, finding.Decision.Name))],
            2
        );
    }

    /// <summary>Two boxes for a pen.</summary>
    private static Drawing Choice() =>
        new(
            230,
            14,
            $"To be ticked by the owner: have it done, or leave it",
            [
                new Box(0.5, 2, 9, 9, 0, null, Ink.Full, 0.8),
                new Words(15, 10, $"have it done", 9, Ink.Full, false, false),
                new Box(110, 2, 9, 9, 0, null, Ink.Full, 0.8),
                new Words(124.5, 10, $"leave it", 9, Ink.Full, false, false),
            ]
        );

    private static IReadOnlyList<Cell> Columns() =>
        [
            Cell.Of(0, ItemWidth, ($"Finding, parts, work", Typeface.Aside)),
            Cell.AtRight(QuantityRight, $"Quantity", Typeface.Aside),
            Cell.AtRight(PriceRight, $"Each", Typeface.Aside),
            Cell.AtRight(AmountRight, $"Amount", Typeface.Aside),
        ];
}
