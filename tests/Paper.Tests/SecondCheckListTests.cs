using UglyToad.PdfPig;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Paper.Handover;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>The second check on the handover sheet and in the owner's record.</summary>
public class SecondCheckListTests
{
    [Fact]
    public void Each_point_says_what_two_people_read_and_what_is_missing_is_loud()
    {
        Assert.Equal(
            [
                ("Slack: Ines Marlow read 25 ± 1 mm, Ines Marlow read 24 ± 1 mm: they agree, Eₙ = 0.71.", false),
                ("Pads: a second person has still to read it.", true),
            ],
            SecondCheckList.Of(Checked()).Select(l => (l.Line.ToString(), l.Loud))
        );
        var sheet = Text(HandoverSheet.Pdf(Checked(), Bench640.Workbench, FullJob.Day));
        Assert.Contains("Readagainbyasecondperson,whohadnotbeenshownthefirstreading", sheet);
        Assert.Contains("Pads:asecondpersonhasstilltoreadit.", sheet);
    }

    [Fact]
    public void A_job_without_it_has_no_such_list() =>
        Assert.DoesNotContain(
            "secondperson",
            Text(
                HandoverSheet.Pdf(
                    FullJob.Of(
                        [State(Point("slack", "Slack"), Bench640.Figure(13, 32), Stripe.Marked, Reading(25, 1, null))],
                        []
                    ),
                    Bench640.Workbench,
                    FullJob.Day
                )
            )
        );

    private static JobState Checked()
    {
        var figure = Bench640.Figure(13, 32);
        var (slack, pads) = (Point("slack", "Slack"), Point("pads", "Pads"));
        var (first, second) = (Reading(25, 1, figure), Reading(24, 1, figure));
        return FullJob.Of(
            [
                State(slack, figure, Stripe.Marked, first) with
                {
                    Second = new(first, second, Agreement.Of(slack, first, second)),
                },
                State(pads, figure, Stripe.Marked, first) with
                {
                    Second = new(first, null, null) { Awaited = true },
                },
            ],
            []
        );
    }

    private static string Text(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Concat(document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }
}
