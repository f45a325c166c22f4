using System.Text.Json.Nodes;
using Witnessmark.Bench.Day;
using Witnessmark.DaySolver;

namespace Witnessmark.Day;

/// <summary>A solved day as JSON, for <c>--json</c> and for the board; moments by the shop's clock.</summary>
internal static class DayJson
{
    public static JsonObject Of(DayQuestion question, SolvedDay solved, IReadOnlyList<NotWhole> notWhole, Tongue tongue)
    {
        var missed = LateReason.Of(question, solved.Plan).ToDictionary(m => m.Job);
        return new()
        {
            ["now"] = Moment(question, question.Now),
            ["jobs"] = new JsonArray([
                .. question
                    .Jobs.Where(j => solved.Plan.Of(j.Id) is not null)
                    .Select(j =>
                        (JsonNode)Placed(question, j, solved.Plan.Of(j.Id)!, missed.GetValueOrDefault(j.Id), tongue)
                    ),
            ]),
            ["latenessMinutes"] = solved.Measure.Lateness,
            ["latenessAtLeast"] = solved.LatenessBound,
            ["benchMinutes"] = solved.Measure.BenchTime,
            ["benchAtLeast"] = solved.BenchBound,
            ["idleMinutes"] = solved.Measure.Idle,
            ["proven"] = solved.Proven,
            ["seconds"] = Math.Round(solved.Seconds, 2),
            ["bestAfterSeconds"] = Math.Round(solved.BestAfter, 2),
            ["withoutPlace"] = Reasons(solved.Without.Select(w => (w.Job, w.Words.In(tongue)))),
            ["loosened"] = Reasons(solved.Loosened.Select(l => (l.Job, l.Words.In(tongue)))),
            ["notWhole"] = new JsonArray([.. notWhole.Select(n => (JsonNode)Lacking(n, tongue))]),
        };
    }

    private static JsonObject Placed(
        DayQuestion question,
        DayJob job,
        PlacedJob at,
        MissedPromise? missed,
        Tongue tongue
    )
    {
        var placed = new JsonObject
        {
            ["job"] = job.Id,
            ["title"] = job.Title,
            ["technician"] = at.Technician,
            ["lift"] = at.Lift,
            ["starts"] = new JsonArray([.. at.Starts.Select(s => (JsonNode)Moment(question, s))]),
            ["steps"] = new JsonArray([
                .. job.Steps.Select(s =>
                    (JsonNode)
                        new JsonObject
                        {
                            ["what"] = s.What.In(tongue),
                            ["hands"] = s.Hands,
                            ["waits"] = s.Waits,
                        }
                ),
            ]),
            ["ready"] = Moment(question, at.Ready(job)),
        };
        if (job.Promised is { } promised)
            placed["promised"] = Moment(question, promised);
        if (missed is not null)
            (placed["lateMinutes"], placed["because"]) = (missed.Minutes, missed.Words.In(tongue));
        return placed;
    }

    private static string Moment(DayQuestion question, int minute) => ShopTime.Write(question.At(minute));

    private static JsonArray Reasons(IEnumerable<(string Job, string Words)> reasons) =>
        new([.. reasons.Select(r => (JsonNode)new JsonObject { ["job"] = r.Job, ["because"] = r.Words })]);

    private static JsonObject Lacking(NotWhole job, Tongue tongue) =>
        new()
        {
            ["job"] = job.Job,
            ["because"] = job.Words.In(tongue),
            ["lacks"] = new JsonArray([.. job.Lacks.Select(l => (JsonNode)l.In(tongue))]),
        };
}
