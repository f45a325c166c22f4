using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Tests.Visits;

namespace Witnessmark.Bench.Tests.Expectations;

/// <summary>Cautions after work: each follows from what the record says. The cautions themselves are common practice, no source.</summary>
public class WorkCautionTests
{
    private const string Practice = "common practice, no source";

    [Theory]
    [InlineData(
        "rear-pads",
        "new pads fitted",
        "Rear brake pads, lining: new (“new pads fitted”). Pump lever and pedal"
    )]
    [InlineData("front-pads", "pads renewed", "Front brake pads, lining: new (“pads renewed”).")]
    [InlineData("tyre-rear-tread", "tyre replaced", "Rear tyre, tread depth: new tyre (“tyre replaced”). Ride gently")]
    [InlineData(
        "chain-slack",
        "new chain and sprockets",
        "The chain is new (“new chain and sprockets”): it gives at first."
    )]
    public void What_was_written_down_as_new_has_its_caution(string point, string did, string said)
    {
        var caution = Assert.Single(After(w => w.Does(point, did)));
        Assert.StartsWith(said, caution.Words);
        Assert.Equal(Practice, caution.Source);
    }

    [Theory]
    [InlineData("rear-pads", "pins freed and greased")]
    [InlineData("rear-pads", "renewal advised")] // a word that only looks like one
    [InlineData("chain-slack", "cleaned")]
    [InlineData("mirrors-lights", "new bulb")]
    public void Other_work_has_none(string point, string did) => Assert.Empty(After(w => w.Does(point, did)));

    [Fact]
    public void A_lining_that_reads_better_beyond_doubt_is_new_though_nobody_wrote_that()
    {
        var caution = Assert.Single(After(w => w.ReadsAll("rear-pads", "1.20 mm").ReadsAll("rear-pads", "5.00 mm")));
        Assert.Matches(@"^Rear brake pads, lining: new \(read 1\.2.*, then 5.*\)", caution.Words);
        // 0.1 mm is less than three deviations of two readings with the calliper of the demo shop
        Assert.Empty(After(w => w.ReadsAll("rear-pads", "4.90 mm").ReadsAll("rear-pads", "5.00 mm")));
        Assert.Empty(After(w => w.ReadsAll("rear-pads", "5.00 mm").ReadsAll("rear-pads", "1.70 mm")));
    }

    [Fact]
    public void An_adjusted_chain_is_looked_at_again_and_a_new_one_only_once()
    {
        static ManyVisits Turn(ManyVisits work) =>
            work.Writes(EntryKind.Correction, EntryBody.Turns("chain-slack", "2"));

        var adjusted = Assert.Single(After(Turn));
        Assert.Equal(
            "The chain was adjusted (both adjusters 2 turns tighter): have its slack looked at again after the first rides.",
            adjusted.Words
        );
        Assert.StartsWith(
            "The chain is new",
            Assert.Single(After(w => Turn(w.Does("chain-slack", "new chain")))).Words
        );
    }

    [Fact]
    public void Oil_that_was_put_in_is_looked_at()
    {
        var caution = Assert.Single(After(w => w.Writes(EntryKind.Correction, EntryBody.Added("oil-level", "0.28 L"))));
        Assert.StartsWith("Engine oil was put in", caution.Words);
        Assert.Empty(After(w => w.Writes(EntryKind.Correction, EntryBody.Added("coolant-level", "0.1 L"))));
    }

    [Theory]
    [InlineData("new piston rings", true)]
    [InlineData("new cover gasket", false)]
    public void New_parts_inside_the_engine_ask_for_running_in(string did, bool asked) =>
        Assert.Equal(
            asked,
            After(w => w.Does("engine-leaks", did), "service")
                .Any(c => c.Words.ToString().Contains("Run the engine in"))
        );

    // the distance of the sheet's figure, by whom the sheet says; invented
    [Fact]
    public void A_figure_of_the_sheet_says_how_far_and_by_whom()
    {
        const string figure =
            "[figures.\"after-work.pads\"]\namount = \"200 km\"\norigin = \"maker: handbook p. 73\"\n\n";
        var files = DemoFiles.All.Select(f =>
            f.Name == "sheets/fell-640.toml"
                ? f with
                {
                    Text = f.Text.Replace("[figures.\"pads.front\"]", figure + "[figures.\"pads.front\"]"),
                }
                : f
        );
        var (bench, mistakes) = WorkbenchFiles.Read(files);
        Assert.Empty(mistakes);
        var job = new ManyVisits().Comes("2026-03-10", 12_000).Does("rear-pads", "new pads").Jobs[^1];
        var state = JobFold.Of(job.Job, job.Entries, bench!);
        var caution = Assert.Single(Outlook.Of(state, bench!, []).Cautions);
        Assert.Contains("over 200 km, until they have bedded in", caution.Words);
        Assert.Equal("the maker, handbook p. 73", caution.Source);
        Assert.Equal(OriginKind.Maker, caution.Origin.Kind);
    }

    private static IReadOnlyList<WorkCaution> After(Func<ManyVisits, ManyVisits> work, string purpose = "handover") =>
        Outlook
            .Of(work(new ManyVisits().Comes("2026-03-10", 12_000, purpose: purpose)).Jobs[^1], ManyVisits.Bench, [])
            .Cautions;
}
