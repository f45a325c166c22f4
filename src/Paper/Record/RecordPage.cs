using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Record;

/// <summary>The record of a job for its owner: one HTML file that needs no account, no network and no script.</summary>
public static class RecordPage
{
    /// <summary>What a server says about the page: it may show itself, and nothing else.</summary>
    public static string Policy => RecordStyle.Policy;

    /// <summary>The page. The same job and day give the same text.</summary>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="day">The day on it.</param>
    /// <param name="seal">What the shop signs its code with; null: unsigned.</param>
    /// <param name="pictures">The JPEG file of a photograph by its hash, as large as it is to be shown; null where there is none.</param>
    /// <param name="before">The machine's jobs in this workshop before this one.</param>
    public static string Html(
        JobState state,
        Workbench bench,
        DateOnly day,
        ShopSeal? seal = null,
        Func<string, byte[]?>? pictures = null,
        IEnumerable<JobState>? before = null,
        Tongue? tongue = null
    )
    {
        var page = new HtmlText(tongue ?? Tongue.English);
        page.Raw("<!doctype html>")
            .Raw($"<html lang=\"{page.Tongue.Code}\">")
            .Raw("<head>")
            .Raw("<meta charset=\"utf-8\">");
        page.Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        page.Raw($"<meta http-equiv=\"Content-Security-Policy\" content=\"{RecordStyle.Policy}\">");
        page.Raw($"<title>{HtmlText.Escaped(SheetHead.Title(state).In(page.Tongue))}</title>");
        page.Raw($"<style>{RecordStyle.Css}</style>").Raw("</head>").Raw("<body>");
        page.In("main", () => Fill(page, state, bench, day, seal, pictures ?? (_ => null), before ?? []));
        return page.Raw("</body>").Raw("</html>").ToString();
    }

    private static void Fill(
        HtmlText page,
        JobState state,
        Workbench bench,
        DateOnly day,
        ShopSeal? seal,
        Func<string, byte[]?> pictures,
        IEnumerable<JobState> before
    )
    {
        Head(page, state, bench, day);
        page.Part($"Before you ride", BeforeYouRide.Of(state));
        page.Said("p", UnitsNote.Of(page.Tongue), "soft");
        Expected(page, Outlook.Of(state, bench, before));
        RecordTables.Measured(page, state);
        RecordTables.Tightened(page, state);
        RecordTables.Seen(page, state);
        page.Part(NotTheMakers.Heading, NotTheMakers.Of(state));
        page.Part(SecondCheckList.Heading, SecondCheckList.Of(state));
        foreach (var (heading, lines) in SaidLists.Of(state))
            page.Part(heading, lines);
        page.Part(CampaignList.Heading, CampaignList.Of(state));
        Photographs(page, state, pictures);
        End(page, state, bench, seal);
    }

    private static void Head(HtmlText page, JobState state, Workbench bench, DateOnly day)
    {
        page.Said("p", Sentence.Of(bench.Workshop.Name), "soft");
        page.Said("h1", SheetHead.Title(state));
        page.Said("p", SheetHead.Facts(state, day));
        var strip = StripDrawing.Of([.. state.Points.Select(p => p.Stripe)]);
        page.Raw($"<p class=\"strip\">{SvgPen.Draw(strip, page.Tongue)}</p>");
        page.Said("p", $"{strip.Label}.", "soft");
        if (!SheetHead.Released(state))
            page.Part(
                $"What keeps it here",
                state.Holds.Count > 0
                    ? state.Holds.Select(h => h.Words)
                    : [$"Nothing is held any more; the release is not signed yet."]
            );
    }

    private static void Expected(HtmlText page, Outlook expected)
    {
        if (expected.Services.Count == 0)
            page.Part($"What to expect", (Sentence[])[ExpectationWords.NoSchedule]);
        RecordTables.Services(page, expected);
        page.Said("p", ExpectationWords.NotRead(expected), "soft");
        page.Part(
            $"How far wearing parts go, by this machine's own readings",
            [
                .. ExpectationWords.Told(expected).SelectMany(t => t.Cautions.Prepend(t.Words)),
                .. ExpectationWords.NotTold(expected),
            ]
        );
        page.Part($"After this work", expected.Cautions.Select(ExpectationWords.Of));
    }

    private static void Photographs(HtmlText page, JobState state, Func<string, byte[]?> pictures)
    {
        if (state.Photographs.Count == 0)
            return;
        page.In(
            "section",
            () =>
            {
                page.Said("h2", $"Photographs");
                page.In(
                    "div",
                    () =>
                    {
                        foreach (var photograph in state.Photographs)
                            page.In(
                                "figure",
                                () => Figure(page, photograph, state, pictures(photograph.Picture.Sha256))
                            );
                    },
                    "photographs"
                );
            }
        );
    }

    private static void Figure(HtmlText page, Photograph photograph, JobState state, byte[]? file)
    {
        var picture = photograph.Picture;
        if (file is null)
            page.Said("p", $"The picture is not at the shop.", "soft");
        else
            page.Raw(
                $"<img src=\"data:image/jpeg;base64,{Convert.ToBase64String(file)}\" width=\"{picture.Width}\" height=\"{picture.Height}\" alt=\"{HtmlText.Escaped(photograph.Shows)}\">"
            );
        page.In(
            "figcaption",
            () =>
                page.Said("p", Sentence.Of(photograph.Shows), "loud")
                    .Said("p", PointWords.Of(photograph, state))
                    .Said("p", $"{photograph.Entry.By}, {photograph.Entry.At}")
                    .Said("p", $"SHA-256 {picture.Sha256}", "soft hash")
        );
    }

    private static void End(HtmlText page, JobState state, Workbench bench, ShopSeal? seal)
    {
        var head = LogBookFile.Head(state, bench);
        page.In(
            "section",
            () =>
            {
                page.Said("h2", SheetHead.Released(state) ? (Sentence)$"Released" : (Sentence)$"Not released");
                if (SheetHead.Released(state))
                    page.Said("p", $"Released by {state.Release!.Names}.");
                page.Raw(
                    $"<p class=\"code\">{SvgPen.Draw(SheetEnd.Code(state, bench.Workshop.Id, head, seal).Drawing!, page.Tongue)}</p>"
                );
                page.Said(
                    "p",
                    seal is null
                        ? (Sentence)
                            $"The code holds the seal of the log book of job {state.Job}. This page is to be read; what proves it is the log book, which the workshop gives as a file and which the handover sheet carries inside."
                        : (Sentence)
                            $"The code holds the seal of the log book of job {state.Job}, signed with the workshop's key {seal.Key.Id}. This page is to be read; what proves it is the log book, which the workshop gives as a file and which the handover sheet carries inside."
                );
                page.Said("p", Sentence.Of(head), "hash");
            }
        );
    }
}
