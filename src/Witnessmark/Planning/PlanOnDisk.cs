using Witnessmark.Bench.Book;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Kit;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Times;
using Witnessmark.Bench.Toml;
using Witnessmark.Judge;
using Witnessmark.Serve;
using Witnessmark.Times;

namespace Witnessmark.Planning;

/// <summary>A plan made from a job file: what to do, and in which order what is left of it.</summary>
/// <param name="Job">The job as far as its file takes it.</param>
/// <param name="Lines">The plan.</param>
/// <param name="Open">What is still to do, and from where.</param>
/// <param name="Kit">What is laid ready for what is still to do.</param>
internal sealed record PlanOnDisk(JobState Job, IReadOnlyList<PlanLine> Lines, OrderQuestion Open, Kit Kit)
{
    /// <summary>The plan, or every mistake in the files.</summary>
    /// <param name="file">The job file; files of earlier visits are named in it.</param>
    /// <param name="data">A shop whose ledger and campaign lists are asked too, or null.</param>
    public static (PlanOnDisk? Plan, IReadOnlyList<Mistake> Mistakes) Read(FileInfo file, ShopPlace? data)
    {
        var (steps, bench, header, mistakes) = JobOnDisk.Read(file, new Dictionary<string, byte[]>());
        if (steps is null)
            return (null, mistakes);
        var (earlier, wrong) = JobOnDisk.Earlier(file, header!);
        if (earlier is null)
            return (null, wrong);
        List<JobState> visits = [.. earlier];
        var job = steps[^1];
        if (data is not null)
            visits.AddRange(InLedger(data, job, bench!));
        var all = visits.Select(PastVisit.Of).OfType<PastVisit>().ToList();
        var arrival = job.Arrival!;
        var question = new PlanQuestion(arrival.Purpose, arrival.Sheet, arrival.Machine, header!.Day)
        {
            Kilometres = header.Kilometres,
            Visits = [.. all.Where(v => v.Machine == arrival.Machine.Id)],
            Fleet = all,
            Today = PastVisit.Of(job),
            Campaigns = data is null ? arrival.Campaigns : Campaigns(data, job),
            Settings = bench!.Workshop.Planning,
        };
        return (Of(job, bench, question, new(header.Day.ToDateTime(default), TimeSpan.Zero), data), []);
    }

    private static PlanOnDisk Of(
        JobState job,
        Workbench bench,
        PlanQuestion question,
        DateTimeOffset now,
        ShopPlace? data
    )
    {
        var lines = JobPlan.Of(job, Proposal.Of(bench, question), bench.Book);
        var done = job
            .Points.Where(p => p.Marked is not null || p.Left is not null)
            .Select(p => p.Point.Id)
            .ToHashSet();
        Point[] open = [.. lines.Select(l => l.Point).Where(p => !done.Contains(p.Id))];
        var stock = data is null ? null : data.StockIfThere()?.Shelf();
        return new(
            job,
            lines,
            WhereItStands.Of(job, bench.Book, now) with
            {
                Open = open,
                Times = data is null ? PlanTimes.ByTheBook : new(TimesOnDisk.Learnt(data, bench.Book), null),
            },
            Kit.For(open, question.Sheet, bench.Workshop, stock, question.Day, job.Job)
        );
    }

    private static IEnumerable<JobState> InLedger(ShopPlace data, JobState job, Workbench bench)
    {
        var ledger = data.Ledger;
        var notCounting = data.NotCounting();
        return ledger
            .Jobs()
            .Where(j => j.Job != job.Job)
            .Select(j => JobFold.Of(j.Job, ledger.OfJob(j.Job), bench, notCounting))
            .Where(j => j.Arrival?.Sheet.Id == job.Arrival!.Sheet.Id);
    }

    private static IReadOnlyList<FoundCampaign>? Campaigns(ShopPlace data, JobState job)
    {
        var arrival = job.Arrival!;
        if (arrival.Machine.Make is not { } make || data.CampaignsIfThere() is not { } store)
            return arrival.Campaigns;
        var machine = new AskedMachine(make, arrival.Sheet.Name, arrival.Machine.Year, arrival.Machine.Vin);
        var matches = CampaignMatches.Of(store.Of(machine), machine);
        return
        [
            .. OpenCampaigns
                .Of(matches, job.CampaignsDone.Select(c => c.Number))
                .Select(m => new FoundCampaign(
                    m.Campaign.Number,
                    m.Campaign.Component,
                    m.Concern == Concern.Concerns,
                    m.Campaign.Says.DoNotRide == true,
                    m.Campaign.Says.ParkOutside == true
                )),
        ];
    }
}
