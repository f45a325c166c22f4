using System.Globalization;
using System.Text;
using PdfSharp.Pdf;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The handover sheet: what the next owner gets on paper and as PDF, with the log book inside.</summary>
public static class HandoverSheet
{
    /// <summary>The sheet as PDF, A4. The same job printed on the same day gives the same bytes.</summary>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="printedOn">The day on it.</param>
    /// <param name="pictures">The JPEG file of a photograph by its hash; null where there is none.</param>
    public static byte[] Pdf(
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        Func<string, byte[]?>? pictures = null
    )
    {
        using var document = new PdfDocument();
        var title = SheetHead.Title(state);
        Describe(document, title, bench, printedOn);
        var logBook = Encoding.UTF8.GetBytes(LogBookFile.Write(state, bench));
        using var inside = new MemoryStream(logBook);
        document.AddEmbeddedFile("log-book.json", inside);
        var pages = new Pages(document, $"{title} · job {state.Job} · {bench.Workshop.Name}");
        Fill(pages, state, bench, printedOn, pictures ?? (_ => null));
        pages.Close();
        return Saved(document, printedOn);
    }

    private static void Fill(
        Pages pages,
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        Func<string, byte[]?> pictures
    )
    {
        SheetHead.Write(pages, state, bench, printedOn);
        MeasuredTable.Write(pages, state);
        TightenedTable.Write(pages, state);
        SeenList.Write(pages, state);
        NotTheMakers.Write(pages, state);
        SaidLists.Write(pages, state);
        CampaignList.Write(pages, state);
        PhotographList.Write(pages, state, pictures);
        BeforeYouRide.Write(pages, state);
        SheetEnd.Write(pages, state, LogBookFile.Head(state, bench));
    }

    private static void Describe(PdfDocument document, string title, Workbench bench, DateOnly printedOn)
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

    private static byte[] Saved(PdfDocument document, DateOnly printedOn)
    {
        // Both ids of a file that was never revised are the same; here they say what it is, not when it was made.
        var id = printedOn.ToString("'witnessmark-'yyyy", CultureInfo.InvariantCulture);
        document.Internals.FirstDocumentID = id;
        document.Internals.SecondDocumentID = id;
        using var stream = new MemoryStream();
        document.Save(stream, false);
        return FixedBytes.Of(stream.ToArray(), printedOn);
    }
}
