using System.Text.Json;

namespace Witnessmark.Bench.Day;

/// <summary>The plan as the shop's solver gave it: JSON with moments by the shop's clock.</summary>
/// <param name="Made">When it was made.</param>
/// <param name="Plan">The plan, in minutes of the question it is held against.</param>
/// <param name="Proven">Whether no plan could be better.</param>
/// <param name="LatenessAtLeast">No plan misses its promises by less, in minutes all together.</param>
/// <param name="Without">Jobs that have no place.</param>
/// <param name="Loosened">Places by hand that could not be kept.</param>
public sealed record DayPlanText(
    DateTime Made,
    DayPlan Plan,
    bool Proven,
    int LatenessAtLeast,
    IReadOnlyList<NoPlace> Without,
    IReadOnlyList<NoPlace> Loosened
)
{
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
                Reasons(root.GetProperty("loosened"))
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

    private static NoPlace[] Reasons(JsonElement list) =>
        [
            .. list.EnumerateArray()
                .Select(r => new NoPlace(r.GetProperty("job").GetString()!, r.GetProperty("because").GetString()!)),
        ];

    private static DateTime Moment(JsonElement text) =>
        ShopTime.Read(text.GetString() ?? "") ?? throw new FormatException("no moment");
}
