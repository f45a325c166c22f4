using System.Text.Json;

namespace Witnessmark.Bench.Day;

/// <summary>The plan as the shop's solver gave it: JSON with moments by the shop's clock.</summary>
/// <param name="Made">When it was made.</param>
/// <param name="Plan">The plan, in minutes of the question it is held against.</param>
/// <param name="Proven">Whether no plan could be better.</param>
/// <param name="LatenessAtLeast">No plan misses its promises by less, in minutes all together.</param>
/// <param name="Without">Jobs that have no place.</param>
/// <param name="Loosened">Places by hand that could not be kept.</param>
/// <param name="NotWhole">Jobs whose kit lacks something.</param>
/// <param name="Lengths">Hands-on and unattended minutes that the shop took for each step of a job; empty in a plan of before.</param>
public sealed record DayPlanText(
    DateTime Made,
    DayPlan Plan,
    bool Proven,
    int LatenessAtLeast,
    IReadOnlyList<NoPlace> Without,
    IReadOnlyList<NoPlace> Loosened,
    IReadOnlyList<NotWhole> NotWhole,
    IReadOnlyDictionary<string, IReadOnlyList<(int Hands, int Waits)>> Lengths
)
{
    /// <summary>
    /// The question with the lengths that the shop planned with, which has seen more work than a device has; where a job has fewer
    /// steps left than then, its own.
    /// </summary>
    public DayQuestion AsLong(DayQuestion question) =>
        question with
        {
            Jobs =
            [
                .. question.Jobs.Select(job =>
                    Lengths.TryGetValue(job.Id, out var lengths) && lengths.Count == job.Steps.Count
                        ? job with
                        {
                            Steps =
                            [
                                .. job.Steps.Zip(lengths, (step, l) => step with { Hands = l.Hands, Waits = l.Waits }),
                            ],
                        }
                        : job
                ),
            ],
        };

    /// <summary>Reads the plan; null when the text is none.</summary>
    public static DayPlanText? Read(string text, DayQuestion question)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            return new(
                Moment(root.GetProperty("now")),
                new([.. root.GetProperty("jobs").EnumerateArray().Select(j => Placed(j, question))]),
                root.GetProperty("proven").GetBoolean(),
                root.GetProperty("latenessAtLeast").GetInt32(),
                Reasons(root.GetProperty("withoutPlace")),
                Reasons(root.GetProperty("loosened")),
                root.TryGetProperty("notWhole", out var lacking) ? [.. lacking.EnumerateArray().Select(Lacking)] : [],
                root.GetProperty("jobs").EnumerateArray().ToDictionary(j => j.GetProperty("job").GetString()!, Steps)
            );
        }
        catch (Exception unread)
            when (unread is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static PlacedJob Placed(JsonElement job, DayQuestion question) =>
        new(
            job.GetProperty("job").GetString()!,
            job.GetProperty("technician").GetString()!,
            job.GetProperty("lift").GetString()!,
            [.. job.GetProperty("starts").EnumerateArray().Select(s => question.Minute(Moment(s)))]
        );

    private static IReadOnlyList<(int, int)> Steps(JsonElement job) =>
        job.TryGetProperty("steps", out var steps)
            ?
            [
                .. steps
                    .EnumerateArray()
                    .Select(s => (s.GetProperty("hands").GetInt32(), s.GetProperty("waits").GetInt32())),
            ]
            : [];

    // a plan of before has all of it in one sentence
    private static NotWhole Lacking(JsonElement job) =>
        new(
            job.GetProperty("job").GetString()!,
            job.TryGetProperty("lacks", out var parts)
                ? [.. parts.EnumerateArray().Select(p => Sentence.Of(p.GetString()))]
                : [Sentence.Of(job.GetProperty("because").GetString())]
        );

    private static NoPlace[] Reasons(JsonElement list) =>
        [
            .. list.EnumerateArray()
                .Select(r => new NoPlace(
                    r.GetProperty("job").GetString()!,
                    Sentence.Of(r.GetProperty("because").GetString())
                )),
        ];

    private static DateTime Moment(JsonElement text) =>
        ShopTime.Read(text.GetString() ?? "") ?? throw new FormatException("no moment");
}
