using System.Globalization;
using PdfSharp.Pdf;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Findings;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The handover sheet: what the next owner gets on paper and as PDF, with the log book inside.</summary>
public static class HandoverSheet
{
    /// <summary>The sheet as PDF/A-3. The same job printed on the same day gives the same bytes.</summary>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="printedOn">The day on it.</param>
    /// <param name="size">The paper; A4 where none is given.</param>
    /// <param name="seal">What the shop signs its log book with; null: unsigned.</param>
    /// <param name="earlier">The machine's visits before this one.</param>
    /// <param name="pictures">The JPEG file of a photograph by its hash; null where there is none.</param>
    public static byte[] Pdf(
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        PaperSize? size = null,
        ShopSeal? seal = null,
        EarlierVisits? earlier = null,
        Func<string, byte[]?>? pictures = null
    )
    {
        using var document = new PdfDocument();
        document.SetPdfA();
        var title = SheetHead.Title(state);
        Describe(document, title, bench, printedOn);
        var pages = new Pages(size ?? PaperSize.A4, $"{title} · job {state.Job} · {bench.Workshop.Name}");
        Fill(pages, state, bench, printedOn, seal, pictures ?? (_ => null));
        AttachedFile.Add(
            document,
            "log-book.json",
            LogBookFile.Write(state, bench, seal, earlier, pages.Lines()),
            $"The log book of job {state.Job}: what this sheet says, for programs.",
            printedOn
        );
        pages.Draw(document);
        return Saved(document, printedOn);
    }

    private static void Fill(
        Pages pages,
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        ShopSeal? seal,
        Func<string, byte[]?> pictures
    )
    {
        SheetHead.Write(pages, state, bench, printedOn);
        MeasuredTable.Write(pages, state);
        TightenedTable.Write(pages, state);
        SeenList.Write(pages, state);
        NotTheMakers.Write(pages, state);
        FindingList.Write(pages, state);
        SaidLists.Write(pages, state);
        CampaignList.Write(pages, state);
        PhotographList.Write(pages, state, pictures);
        var head = LogBookFile.Head(state, bench);
        BeforeYouRide.Write(pages, state, SheetEnd.Code(state, bench.Workshop.Id, head, seal));
        SheetEnd.Write(pages, state, head, seal);
    }

    internal static void Describe(PdfDocument document, string title, Workbench bench, DateOnly printedOn)
    {
        var day = printedOn.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Language = "en";
        document.Info.Title = title;
        document.Info.Author = bench.Workshop.Name;
        document.Info.Creator = "Witnessmark";
        document.Info.CreationDate = day;
        document.Info.ModificationDate = day;
        document.ViewerPreferences.DisplayDocTitle = true;
    }

    internal static byte[] Saved(PdfDocument document, DateOnly printedOn)
    {
        // Both ids of a file that was never revised are the same; here they say what it is, not when it was made.
        var id = printedOn.ToString("'witnessmark-'yyyy", CultureInfo.InvariantCulture);
        document.Internals.FirstDocumentID = id;
        document.Internals.SecondDocumentID = id;
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        using var stream = new MemoryStream();
        document.Save(stream, false);
        return ArchiveFile.Of(stream.ToArray(), printedOn);
    }
}
