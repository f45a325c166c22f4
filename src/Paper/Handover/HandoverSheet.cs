using Witnessmark.Bench.Expectations;
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
    /// <param name="size">The paper; null: what the workshop prints on.</param>
    /// <param name="seal">What the shop signs its log book with; null: unsigned.</param>
    /// <param name="earlier">The machine's visits before this one.</param>
    /// <param name="pictures">The JPEG file of a photograph by its hash; null where there is none.</param>
    /// <param name="before">The machine's jobs in this workshop before this one; what is to be expected is told from them too.</param>
    /// <param name="tongue">The language of the paper; null: English. The log book inside is the same in every one.</param>
    public static byte[] Pdf(
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        PaperSize? size = null,
        ShopSeal? seal = null,
        EarlierVisits? earlier = null,
        Func<string, byte[]?>? pictures = null,
        IEnumerable<JobState>? before = null,
        Tongue? tongue = null
    )
    {
        var said = tongue ?? Tongue.English;
        var title = SheetHead.Title(state);
        using var document = PdfFile.New(title, bench.Workshop.Name, printedOn, said);
        var pages = new Pages(
            size ?? PaperSize.Of(bench.Workshop),
            $"{title} · job {state.Job} · {bench.Workshop.Name}",
            said
        );
        Fill(pages, state, bench, printedOn, seal, pictures ?? (_ => null), Outlook.Of(state, bench, before ?? []));
        AttachedFile.Add(
            document,
            "log-book.json",
            LogBookFile.Write(state, bench, seal, earlier, pages.Lines()),
            $"The log book of job {state.Job}: what this sheet says, for programs.",
            printedOn
        );
        pages.Draw(document);
        return PdfFile.Saved(document, printedOn);
    }

    private static void Fill(
        Pages pages,
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        ShopSeal? seal,
        Func<string, byte[]?> pictures,
        Outlook expected
    )
    {
        SheetHead.Write(pages, state, bench, printedOn);
        UnitsNote.Write(pages);
        MeasuredTable.Write(pages, state);
        TightenedTable.Write(pages, state);
        SeenList.Write(pages, state);
        NotTheMakers.Write(pages, state);
        SecondCheckList.Write(pages, state);
        FindingList.Write(pages, state);
        SaidLists.Write(pages, state);
        CampaignList.Write(pages, state);
        WhatToExpect.Write(pages, expected);
        PhotographList.Write(pages, state, pictures);
        SheetEnd.Write(pages, state, bench.Workshop.Id, LogBookFile.Head(state, bench), seal);
    }
}
