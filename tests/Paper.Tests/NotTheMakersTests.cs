using UglyToad.PdfPig;
using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Handover;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

public class NotTheMakersTests
{
    private static readonly Origin Shop = new(OriginKind.Shop, "");

    [Fact]
    public void Each_point_says_whose_figure_it_is_and_who_vouches()
    {
        var shops = Bench640.Figure(1.5, null, Shop);
        var habit = Bench640.Figure(null, 6, new Origin(OriginKind.CommonPractice, ""));
        var state = Job(
            State(Point("round", "Chain once round", safety: false), habit, Stripe.Marked, Reading(4, 1, habit)),
            State(Point("pads", "Pads"), shops, Stripe.Marked, Reading(4, 0.1, shops)) with
            {
                Vouched = new(FullJob.Chain()[0], "Bram Okello"),
            },
            State(Point("axle", "Axle"), habit, Stripe.Marked, Reading(4, 1, habit)),
            State(Point("unread", "Not read"), habit, Stripe.Unread),
            State(Point("slack", "Slack"), Bench640.Figure(13, 32), Stripe.Marked, Reading(25, 1, null))
        );
        Assert.Equal(
            [
                ("Pads: ≥ 1.5 mm, the workshop's figure, not the maker's. Bram Okello vouches for it.", false),
                ("Axle: ≤ 6 mm, common practice, not the maker's figure. Nobody has vouched for it.", true),
                (
                    "No points of safety, nobody has to vouch: Chain once round: ≤ 6 mm, common practice, not the maker's figure.",
                    false
                ),
            ],
            NotTheMakers.Of(state).Select(l => (l.Line.ToString(), l.Loud))
        );
        Assert.Contains("BramOkellovouchesforit.", Text(HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day)));
    }

    [Fact]
    public void A_figure_given_at_the_bench_says_by_whom()
    {
        var figure = Bench640.Figure(1.5, null);
        var state = State(Point("pads", "Pads"), figure, Stripe.Marked, Reading(4, 0.1, figure)) with
        {
            Given = new GivenFigure(FullJob.Chain()[0], "pads", figure, null),
        };
        Assert.EndsWith("; given at the bench by Ines Marlow", PointWords.Origin(state));
        Assert.Empty(NotTheMakers.Of(Job(state)));
    }

    [Fact]
    public void Photographs_are_printed_small_with_their_hash_and_missing_ones_are_told()
    {
        var state = Job(State(Point("pads", "Pads"), null, Stripe.Unread)) with
        {
            Photographs =
            [
                Photograph("", null, "the left side"),
                Photograph("pads", "pads.front", "page 71"),
                Photograph("gone", null, "an unknown point"),
            ],
        };
        var with = HandoverSheet.Pdf(
            state,
            Bench640.Workbench,
            FullJob.Day,
            pictures: h => h == TinyPicture.Sha256 ? TinyPicture.Plain : null
        );
        using var pdf = PdfDocument.Open(with);
        Assert.All(pdf.GetPages().SelectMany(p => p.GetImages()), i => Assert.Equal(16, i.WidthInSamples));
        Assert.Equal(3, pdf.GetPages().SelectMany(p => p.GetImages()).Count());
        Assert.All(
            (string[])
                ["theleftside", "Themachine", "Pads:whereitsfigurestands", "gone", TinyPicture.Sha256, "InesMarlow"],
            words => Assert.Contains(words, Text(with))
        );
        Assert.Equal(with, HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day, pictures: _ => TinyPicture.Plain));
        Assert.Contains("Thepictureisnotattheshop.", Text(HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day)));
    }

    private static Photograph Photograph(string point, string? figure, string shows) =>
        new(FullJob.Chain()[0], point, figure, new(TinyPicture.Sha256, 16, 12, TinyPicture.Plain.Length), shows);

    private static JobState Job(params PointState[] points) => FullJob.Of(points, []);

    private static string Text(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Concat(document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }
}
