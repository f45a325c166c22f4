using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Findings;

/// <summary>The estimate sheet: what was found on a machine, what putting it right is expected to cost, and the owner's word on it.</summary>
public static class EstimateSheet
{
    /// <summary>The sheet as PDF/A-3. The same job printed on the same day gives the same bytes.</summary>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="printedOn">The day on it.</param>
    /// <param name="size">The paper; A4 where none is given.</param>
    /// <param name="pictures">The JPEG file of a photograph by its hash; null where there is none.</param>
    /// <param name="tongue">The language of the paper; null: English.</param>
    public static byte[] Pdf(
        JobState state,
        Workbench bench,
        DateOnly printedOn,
        PaperSize? size = null,
        Func<string, byte[]?>? pictures = null,
        Tongue? tongue = null
    )
    {
        var said = tongue ?? Tongue.English;
        Sentence title = state.Arrival is { Machine.Name: var name }
            ? (Sentence)$"Estimate, {name}"
            : (Sentence)$"Estimate, job {state.Job}";
        using var document = PdfFile.New(title, bench.Workshop.Name, printedOn, said);
        var pages = new Pages(size ?? PaperSize.A4, $"{title} · job {state.Job} · {bench.Workshop.Name}", said);
        Head(pages, title, state, bench, printedOn);
        foreach (var findings in FindingList.Sorted(state.Findings).GroupBy(f => f.Urgency))
            EstimateTable.Write(pages, findings.Key, [.. findings], pictures ?? (_ => null));
        End(pages, state, bench);
        pages.Draw(document);
        return PdfFile.Saved(document, printedOn);
    }

    private static void Head(Pages pages, Sentence title, JobState state, Workbench bench, DateOnly printedOn)
    {
        var machine = state.Arrival?.Machine;
        Sentence?[] facts =
        [
            machine?.Vin is { Length: > 0 } vin ? (Sentence)$"VIN ends {vin[Math.Max(0, vin.Length - 4)..]}" : null,
            machine?.Plate is { } plate ? Sentence.Of(plate) : null,
            SheetHead.Day(printedOn),
            $"job {state.Job}",
        ];
        pages.Row(
            [
                Cell.Of(
                    0,
                    360,
                    (title, Typeface.Title),
                    (
                        Sentence.List(facts.OfType<Sentence>().Select(Cell.Whole), " · "),
                        Typeface.Aside with
                        {
                            Size = 9,
                        }
                    )
                ),
                Cell.Of(
                    372,
                    Pages.Width - 372,
                    (Sentence.Of(bench.Workshop.Name), Typeface.Strong),
                    ($"estimate sheet", Typeface.Aside)
                ),
            ],
            0,
            false
        );
        if (state.Findings.Count == 0)
            pages.Row(
                [Cell.Of(0, Pages.Width, ($"Nothing was found that the owner has to decide on.", Typeface.Body))],
                8
            );
    }

    private static void End(Pages pages, JobState state, Workbench bench)
    {
        var sums = Sums(state.Findings).ToList();
        if (sums.Count > 0)
        {
            pages.Begin($"Together", 20);
            foreach (var (words, money) in sums)
                pages.Row(
                    [
                        Cell.Of(0, EstimateTable.AmountRight - 100, (words, Typeface.Strong)),
                        Cell.AtRight(EstimateTable.AmountRight, money, Typeface.Strong),
                    ],
                    2
                );
            pages.End();
        }
        pages.Gap(6);
        foreach (var words in Small(state, bench))
            pages.Row([Cell.Of(0, Pages.Width, (words, Typeface.Aside))], 1, false);
        if (state.Findings.Any(f => f.Decision is null))
            pages.Row(
                [
                    SheetEnd.Signature(0, $"for the workshop", Sentence.Empty),
                    SheetEnd.Signature(200, $"owner: name, day, signature", Sentence.Empty),
                ],
                2,
                false
            );
    }

    /// <summary>All estimates and those that were approved, each currency by itself: a shop may have changed it.</summary>
    private static IEnumerable<(Sentence Words, Sentence Money)> Sums(IEnumerable<Finding> findings)
    {
        foreach (var same in findings.Where(f => f.Estimate is not null).GroupBy(f => f.Estimate!.Terms.Currency))
        {
            yield return ($"All of it, with tax", Sum(same, same.Key));
            if (same.Any(f => f.Decision is { Approved: true }))
                yield return ($"Approved, with tax", Sum(same.Where(f => f.Decision is { Approved: true }), same.Key));
        }
    }

    private static Sentence Sum(IEnumerable<Finding> findings, Currency currency) =>
        Sentence.Number(new Money(findings.Sum(f => f.Estimate!.Total.Units), currency).ToString());

    private static IEnumerable<Sentence> Small(JobState state, Workbench bench)
    {
        if (state.Findings.Any(f => f.Estimate is not null))
            yield return $"An estimate is what the work is expected to come to, no bill. Prices and rate are before tax. What it binds the "
                + $"workshop to is for local law.";
        if (
            !state.Findings.All(f =>
                Printable.Whole(f.What) && (f.Estimate?.Parts ?? []).All(p => Printable.Whole(p.Item))
            )
        )
            yield return $"A question mark stands where this sheet's font has no letter; {bench.Workshop.Name} keeps the words as they were written.";
        yield return $"The maker's manual and local law come before anything printed here.";
    }
}
