using Witnessmark.Bench.Day;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Day;

/// <summary>From the entries of a job to its place in the day's question.</summary>
public class DayOfJobsTests
{
    private static readonly DateTime Thursday9 = new(2026, 11, 26, 9, 0, 0);

    private static (DayQuestion Question, DayJob Job) Asked(AtWork work)
    {
        var (question, missing) = DayOfJobs.Of(AtWork.Bench, [work.State], Thursday9);
        Assert.Null(missing);
        return (question!, Assert.Single(question!.Jobs));
    }

    [Fact]
    public void A_job_without_a_word_about_when_is_asked_with_all_its_work()
    {
        var (question, job) = Asked(new AtWork().Arrives());
        Assert.Equal((null, null, null), (job.Promised, job.Parts, job.Held));
        var points = AtWork.Bench.Book.Purposes["handover"].Select(p => AtWork.Bench.Book.Points[p.Point]).ToList();
        var reaches = points.SelectMany(p => p.Reach).Distinct().Select(r => AtWork.Bench.Book.Reach[r]);
        var minutes =
            points.Sum(p => p.Hands.TotalMinutes + p.Waits.TotalMinutes)
            + reaches.Sum(r => r.Set.TotalMinutes + r.Clear.TotalMinutes);
        Assert.InRange(job.Hands + job.Waits - minutes, 0, job.Steps.Count);
        Assert.Contains(job.Steps, s => s.Waits == 10); // the sump drains: long enough to leave
        Assert.Equal(540, question.Now);
    }

    [Fact]
    public void The_last_promise_and_the_last_parts_hold_and_a_struck_one_does_not()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Promise, EntryBody.Promise(new(2026, 11, 26, 16, 0, 0)));
        work.Writes(EntryKind.Promise, EntryBody.Promise(new(2026, 11, 27, 10, 30, 0)));
        work.Writes(EntryKind.Parts, EntryBody.Parts(new(2026, 11, 26, 11, 0, 0), "front tyre"));
        Assert.Equal((1440 + 630, 660), (Asked(work).Job.Promised, Asked(work).Job.Parts));
        work.Strikes(work.Entries[2].Id);
        Assert.Equal(960, Asked(work).Job.Promised);
        Assert.Empty(work.State.NotUnderstood);
    }

    [Fact]
    public void A_moment_that_is_none_is_kept_and_not_understood()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Promise, EntryBody.Note("at", "Friday"));
        Assert.Single(work.State.NotUnderstood);
        Assert.Null(work.State.Day.Promise);
    }

    [Fact]
    public void A_place_by_hand_holds_until_its_moment_has_passed_then_the_technician_alone()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Placed, EntryBody.Placed("Bram Okello", new(2026, 11, 26, 10, 0, 0)));
        Assert.Equal(new Held("Bram Okello", 600), Asked(work).Job.Held);
        work.Writes(EntryKind.Placed, EntryBody.Placed("Bram Okello", new(2026, 11, 26, 8, 59, 0)));
        Assert.Equal(new Held("Bram Okello", null), Asked(work).Job.Held);
    }

    [Fact]
    public void Without_opening_hours_the_question_says_what_is_missing()
    {
        var bench = AtWork.Bench with { Workshop = AtWork.Bench.Workshop with { Hours = null } };
        var (question, missing) = DayOfJobs.Of(bench, [], Thursday9);
        Assert.Null(question);
        Assert.Contains("[hours]", missing);
    }

    [Fact]
    public void Hours_of_one_who_comes_at_other_times_lie_within_those_of_the_shop()
    {
        var (question, _) = Asked(new AtWork().Arrives());
        var bram = question.Technicians.Single(t => t.Name == "Bram Okello");
        Assert.Equal(["brakes", "tyres"], bram.Skills);
        Assert.DoesNotContain(bram.Hours, h => question.At(h.From).DayOfWeek == DayOfWeek.Saturday);
        Assert.Contains(question.Open, h => question.At(h.From).DayOfWeek == DayOfWeek.Saturday);
        Assert.Equal([new Span(480, 750), new Span(795, 1050)], bram.Hours.Take(2));
        Assert.DoesNotContain(question.Open, h => question.At(h.From).Date == new DateTime(2026, 12, 25)); // beyond or closed
    }

    [Theory]
    [InlineData("2026-11-27T16:00", true)]
    [InlineData("2026-11-27T16:00:00", true)]
    [InlineData("2026-11-27 16:00:00", true)]
    [InlineData("2026-11-27T16:00:30", false)]
    [InlineData("2026-11-27T16:00Z", false)]
    [InlineData("2026-11-27", false)]
    [InlineData("2026-02-30T16:00", false)]
    [InlineData("", false)]
    public void A_moment_is_a_day_and_a_time_by_the_wall(string text, bool read) =>
        Assert.Equal(read, ShopTime.Read(text) is not null);
}
