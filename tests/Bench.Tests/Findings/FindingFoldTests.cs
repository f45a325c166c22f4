using Witnessmark.Bench.Book;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Findings;

/// <summary>What findings, estimates and decisions come to; docs/findings.md. The rules are this project's own.</summary>
public sealed class FindingFoldTests
{
    private const string What = "Rear brake hose is cracked";
    private static readonly EstimateDraft Draft = new("EUR", "78.00", "19", 30, [new("hose", "1", "64.90")]);
    private static readonly string Total = Draft.Read().Certain.Total.ToString();

    [Fact]
    public void Before_riding_holds_until_the_owner_has_decided()
    {
        var work = Found();
        Assert.Equal($"{What}: to be put right before riding; the owner has not decided yet.", Held(work));
        var hold = work.State.Holds.Single(h => h.Finding == "f1");
        Assert.Equal((Stripe.Outside, null), (hold.Stripe, hold.Point));
        Assert.Equal(hold, work.State.Holds[0]);
    }

    [Theory]
    [InlineData(Urgency.ByNextService)]
    [InlineData(Urgency.KeepAnEyeOn)]
    public void The_other_urgencies_hold_nothing(Urgency urgency)
    {
        var work = Found(urgency: urgency);
        Assert.Null(Held(work));
        Assert.Null(Held(Decides(work, false, urgency: urgency)));
        Assert.Null(Held(Decides(work, true, urgency: urgency)));
    }

    [Fact]
    public void Declined_holds_until_it_is_acknowledged_and_then_says_so_in_plain_words()
    {
        var work = Decides(Found(), false);
        Assert.Equal($"{What}: the owner wants it left, and has not acknowledged what that means.", Held(work));
        Decides(work, false, acknowledged: true);
        Assert.Null(Held(work));
        Assert.Equal(
            "The owner was told that this has to be put right before riding, and decided not to have it done (Nora Vance, by telephone). "
                + "Riding the machine as it is can injure or kill. The workshop advises against riding it until this has been put right. "
                + "Nora Vance has acknowledged this.",
            FindingWords.Decided(One(work))
        );
        Assert.True(One(work).DeclinedBeforeRiding);
    }

    [Fact]
    public void An_approved_finding_brings_its_point_into_the_plan_and_its_mark_puts_it_right()
    {
        var work = Found(point: "brake-hoses");
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "brake-hoses");
        Decides(work, true);
        Assert.Equal($"A finding, approved by the owner: {What}.", work["brake-hoses"].Why);
        // the point holds by itself: one thing, said once
        Assert.Null(Held(work));
        Assert.Contains(work.State.Holds, h => h.Point == "brake-hoses");
        work.DoesWell("brake-hoses");
        Assert.DoesNotContain(work.State.Holds, h => h.Point == "brake-hoses");
        Assert.Null(Held(work));
        Assert.True(One(work).IsPutRight);
        Assert.Equal("Put right; its point was marked by Ines Tallow.", FindingWords.Outcome(One(work)));
    }

    [Fact]
    public void A_mark_of_before_the_finding_proves_nothing()
    {
        var work = Opened("brake-hoses").DoesWell("brake-hoses");
        Finds(work, point: "brake-hoses");
        Decides(work, true);
        Assert.Equal($"{What}: approved, not put right yet.", Held(work));
        work.DoesWell("brake-hoses");
        Assert.Null(Held(work));
    }

    [Fact]
    public void Without_a_point_somebody_says_how_it_was_put_right()
    {
        var work = Decides(Found(), true);
        Assert.Equal($"{What}: approved, not put right yet.", Held(work));
        Assert.Equal("Not put right in this visit yet.", FindingWords.Outcome(One(work)));
        work.Writes(EntryKind.PutRight, EntryBody.PutRight("f1", "hose changed"));
        Assert.Null(Held(work));
        Assert.Equal("Put right: hose changed. (Ines Tallow)", FindingWords.Outcome(One(work)));
        work.Strikes(work.Last.Id);
        Assert.NotNull(Held(work));
    }

    [Theory]
    [InlineData("no-such-point")]
    [InlineData("front-drum")] // the demo machine has discs
    public void A_point_that_is_not_there_is_not_planned_and_the_finding_holds(string point)
    {
        var work = Decides(Found(point: point), true);
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == point);
        Assert.Equal($"{What}: approved, not put right yet.", Held(work));
        Assert.Empty(work.State.NotUnderstood);
    }

    [Fact]
    public void A_decision_covers_what_the_owner_was_told_and_nothing_else()
    {
        var work = Decides(Found(), false, acknowledged: true);
        Finds(work, what: "Rear brake hose leaks");
        Assert.Equal("Rear brake hose leaks: it was changed after the owner decided. Ask once more.", Held(work));
        Finds(work);
        Assert.Null(Held(work));
        work.Writes(EntryKind.Estimate, EntryBody.Estimate("f1", Draft));
        Assert.Equal($"{What}: it was changed after the owner decided. Ask once more.", Held(work));
        Decides(work, false, acknowledged: true, total: Total);
        Assert.Null(Held(work));
    }

    [Fact]
    public void A_no_to_something_milder_is_no_answer_to_what_must_be_done_before_riding()
    {
        var work = Decides(Found(urgency: Urgency.ByNextService), false, urgency: Urgency.ByNextService);
        Finds(work);
        Assert.NotNull(Held(work));
    }

    [Fact]
    public void A_photograph_more_asks_nobody_again()
    {
        var work = Decides(Found(), false, acknowledged: true);
        var hash = new string('a', 64);
        work.Writes(EntryKind.Photograph, EntryBody.Photograph(null, null, new(hash, 4, 3, 9), "the crack"));
        work.Writes(EntryKind.Finding, EntryBody.Finding("f1", null, What, Urgency.BeforeRiding, [hash]));
        Assert.Null(Held(work));
        Assert.Equal("the crack", Assert.Single(One(work).Photographs).Shows);
    }

    [Fact]
    public void The_last_word_counts_and_a_struck_one_does_not()
    {
        var work = Decides(Found(point: "brake-hoses"), true);
        Decides(work, false, acknowledged: true);
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "brake-hoses");
        Assert.Null(Held(work));
        work.Strikes(work.Last.Id);
        Assert.Contains(work.State.Points, p => p.Point.Id == "brake-hoses");
    }

    [Fact]
    public void A_struck_finding_is_gone_with_all_that_was_said_of_it()
    {
        var work = Found();
        var id = work.Last.Id;
        Decides(work, true).Strikes(id);
        Assert.Empty(work.State.Findings);
        Assert.Null(Held(work));
        Assert.Equal("this job has no finding \"f1\"", Assert.Single(work.State.NotUnderstood).Why);
    }

    [Fact]
    public void The_point_stays_in_the_plan_when_the_estimate_changes_after_the_yes()
    {
        var work = Decides(Found(point: "brake-hoses"), true);
        work.Writes(EntryKind.Estimate, EntryBody.Estimate("f1", Draft));
        Assert.Contains(work.State.Points, p => p.Point.Id == "brake-hoses");
        Assert.Equal($"{What}: it was changed after the owner decided. Ask once more.", Held(work));
    }

    [Fact]
    public void A_point_that_is_planned_already_has_both_whys()
    {
        var work = Opened("brake-hoses");
        Finds(work, point: "brake-hoses");
        Decides(work, true);
        Assert.Equal($"asked for A finding, approved by the owner: {What}.", work["brake-hoses"].Why);
    }

    [Fact]
    public void A_dropped_point_comes_back_with_the_approval()
    {
        var work = Opened("brake-hoses");
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("brake-hoses", "new last week", "Ines Tallow"));
        Finds(work, point: "brake-hoses");
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "brake-hoses");
        Decides(work, true);
        Assert.Contains(work.State.Points, p => p.Point.Id == "brake-hoses");
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("brake-hoses", "after all", "Ines Tallow"));
        Assert.Equal($"{What}: approved, not put right yet.", Held(work));
    }

    [Fact]
    public void Two_devices_that_decide_differently_at_once_are_asked_again()
    {
        var first = Found();
        var other = new AtWork("phone").Sees(first);
        Decides(first, true);
        Decides(other, false, acknowledged: true);
        Assert.Equal(
            $"{What}: two devices wrote different decisions at the same time. Ask the owner once more.",
            Held(Together(first, other))
        );
        Decides(other.Sees(first), false, acknowledged: true);
        Assert.Null(Held(Together(first, other)));
    }

    [Fact]
    public void Two_devices_that_decide_alike_agree()
    {
        var first = Found();
        var other = new AtWork("phone").Sees(first);
        Decides(first, false, acknowledged: true);
        Decides(other, false, acknowledged: true);
        Assert.Null(Held(Together(first, other)));
    }

    [Fact]
    public void A_finding_after_the_signature_asks_for_it_again_and_an_estimate_does_not()
    {
        var work = Opened("keys").DoesWell("keys").Releases("Ines Tallow");
        Assert.NotNull(work.State.Release);
        Finds(work, urgency: Urgency.KeepAnEyeOn);
        Assert.Null(work.State.Release);
        work.Releases("Ines Tallow");
        work.Writes(EntryKind.Estimate, EntryBody.Estimate("f1", Draft));
        Assert.NotNull(work.State.Release);
        Finds(work);
        Assert.Null(work.State.Release);
        Assert.NotNull(Held(work));
    }

    [Fact]
    public void The_estimate_keeps_the_terms_of_the_day_it_was_made()
    {
        var work = Found().Writes(EntryKind.Estimate, EntryBody.Estimate("f1", Draft));
        // by hand: 39.00 + 64.90 = 103.90; 19 % = 19.741 -> 19.74
        Assert.Equal("123.64 EUR", One(work).Estimate!.Total.ToString());
        work.Writes(EntryKind.Estimate, EntryBody.Estimate("f1", Draft with { Rate = "80.00", Tax = "20" }));
        // by hand: 40.00 + 64.90 = 104.90; 20 % = 20.98
        Assert.Equal("125.88 EUR", One(work).Estimate!.Total.ToString());
    }

    [Theory]
    [InlineData(
        EntryKind.Finding,
        """{"finding":"f1","what":" ","urgency":"before riding"}""",
        "what: nothing is said"
    )]
    [InlineData(EntryKind.Finding, """{"finding":"f1","what":"x","urgency":"soon"}""", "urgency: \"soon\" is none of")]
    [InlineData(EntryKind.Finding, """{"what":"x","urgency":"before riding"}""", "finding: text is missing")]
    [InlineData(
        EntryKind.Finding,
        """{"finding":"f1","what":"x","urgency":"before riding","photographs":["x"]}""",
        "photographs: \"x\" is not 64"
    )]
    [InlineData(
        EntryKind.Estimate,
        """{"finding":"f1","currency":"EUR","rate":"1","tax":"1","minutes":0,"parts":[]}""",
        "empty: neither work nor parts"
    )]
    [InlineData(
        EntryKind.Estimate,
        """{"finding":"f1","currency":"EUR","rate":78,"tax":"1","minutes":0,"parts":[]}""",
        "rate: text is missing"
    )]
    [InlineData(
        EntryKind.Decision,
        """{"finding":"f1","what":"x","urgency":"before riding","decision":"maybe","name":"N","means":"telephone"}""",
        "decision: \"maybe\" is none of approved, declined"
    )]
    [InlineData(
        EntryKind.Decision,
        """{"finding":"f1","what":"x","urgency":"before riding","decision":"declined","name":" ","means":"telephone"}""",
        "name: nothing is said"
    )]
    [InlineData(
        EntryKind.Decision,
        """{"finding":"f1","what":"x","urgency":"before riding","decision":"declined","name":"N","means":"pigeon"}""",
        "means: \"pigeon\" is none of signature, in person, telephone, message"
    )]
    [InlineData(
        EntryKind.Decision,
        """{"finding":"f1","what":"x","urgency":"before riding","decision":"approved","name":"N","means":"signature"}""",
        "signature: decided by a signature that is missing"
    )]
    [InlineData(
        EntryKind.Decision,
        """{"finding":"f1","what":"x","urgency":"before riding","decision":"approved","name":"N","means":"signature","signature":"M1 1L2 2"}""",
        "signature: The signature cannot be kept: nothing is signed yet."
    )]
    [InlineData(EntryKind.PutRight, """{"finding":"f1","how":""}""", "how: nothing is said")]
    public void A_body_that_says_something_else_is_kept_and_not_understood(string kind, string body, string why)
    {
        var work = Found().Writes(kind, Record.Made.Json(body));
        Assert.StartsWith(why, Assert.Single(work.State.NotUnderstood).Why, StringComparison.Ordinal);
        Assert.Equal(What, One(work).What);
    }

    [Fact]
    public void Bodies_hold_text_and_whole_numbers_only()
    {
        Assert.Equal(
            """{"finding":"f1","point":"p","what":"x","urgency":"by next service","photographs":["ab"]}""",
            EntryBody.Finding("f1", "p", "x", Urgency.ByNextService, ["ab"]).GetRawText()
        );
        Assert.Equal(
            """{"finding":"f1","currency":"EUR","rate":"78.00","tax":"19","minutes":30,"parts":[{"item":"a","quantity":"0.5","price":"1.20"},{"item":"b","quantity":"1","price":"2.00","tax":"7"}]}""",
            EntryBody
                .Estimate("f1", Draft with { Parts = [new("a", "0.5", "1.20"), new("b", "1", "2.00", "7")] })
                .GetRawText()
        );
        Assert.Equal(
            """{"finding":"f1","what":"x","urgency":"before riding","total":"1.00 EUR","decision":"declined","name":"N","means":"in person","acknowledged":true}""",
            EntryBody
                .Decision("f1", new("x", Urgency.BeforeRiding, "1.00 EUR"), false, "N", Means.InPerson, true)
                .GetRawText()
        );
        Assert.Equal(
            """{"finding":"f1","what":"x","urgency":"keep an eye on","decision":"approved","name":"N","means":"signature","signature":"M20 60L90 60"}""",
            EntryBody
                .Decision(
                    "f1",
                    new("x", Urgency.KeepAnEyeOn, null),
                    true,
                    "N",
                    Means.Signature,
                    signature: SignaturePath.Read("M20 60L90 60").Certain
                )
                .GetRawText()
        );
    }

    [Fact]
    public void A_signature_is_kept_with_the_decision()
    {
        var signature = SignaturePath.Read("M20 60L90 60L100 20").Certain;
        var work = Found()
            .Writes(
                EntryKind.Decision,
                EntryBody.Decision(
                    "f1",
                    new(What, Urgency.BeforeRiding, null),
                    false,
                    "Nora Vance",
                    Means.Signature,
                    true,
                    signature
                )
            );
        Assert.Equal(signature, One(work).Decision!.Signature);
        Assert.Contains("by signature on the screen", FindingWords.Decided(One(work)));
    }

    [Fact]
    public void What_an_approval_cannot_be_is_acknowledged()
    {
        var work = Found()
            .Writes(
                EntryKind.Decision,
                Record.Made.Json(
                    $$"""{"finding":"f1","what":"{{What}}","urgency":"before riding","decision":"approved","name":"N","means":"message","acknowledged":true}"""
                )
            );
        Assert.False(One(work).Decision!.Acknowledged);
        Assert.Equal("Approved by N, by message.", FindingWords.Decided(One(work)));
    }

    private static AtWork Opened(params string[] points)
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        return new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                machine.Sheet,
                AtWork.Bench.Newest(machine.Sheet)!.Revision,
                "handover",
                points.Select(p => new PlannedPoint(p, "asked for"))
            )
        );
    }

    private static AtWork Found(string? point = null, Urgency urgency = Urgency.BeforeRiding) =>
        Finds(Opened("keys"), What, point, urgency);

    private static AtWork Finds(
        AtWork work,
        string what = What,
        string? point = null,
        Urgency urgency = Urgency.BeforeRiding
    ) => work.Writes(EntryKind.Finding, EntryBody.Finding("f1", point, what, urgency));

    private static AtWork Decides(
        AtWork work,
        bool approved,
        bool acknowledged = false,
        Urgency urgency = Urgency.BeforeRiding,
        string? total = null
    ) =>
        work.Writes(
            EntryKind.Decision,
            EntryBody.Decision("f1", new(What, urgency, total), approved, "Nora Vance", Means.Telephone, acknowledged)
        );

    private static Finding One(AtWork work) => Assert.Single(work.State.Findings);

    private static string? Held(AtWork work) => Held(work.State);

    private static string? Held(JobState state) => state.Holds.SingleOrDefault(h => h.Finding is not null)?.Words;

    private static JobState Together(AtWork one, AtWork two) =>
        JobFold.Of(AtWork.Job, [.. two.Entries, .. one.Entries], AtWork.Bench);
}
