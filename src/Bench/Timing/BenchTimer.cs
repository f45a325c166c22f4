using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Timing;

/// <summary>Something at a point that takes its time by itself: it drains, settles, soaks, cures, cools.</summary>
/// <param name="Id">Job, point and what it waits for: started again, it replaces itself.</param>
/// <param name="Job">The job's number.</param>
/// <param name="Point">The point.</param>
/// <param name="Title">What is waited for, in few words.</param>
/// <param name="Started">When, by the device's clock.</param>
/// <param name="Length">How long it takes.</param>
public sealed record BenchTimer(
    string Id,
    string Job,
    string Point,
    string Title,
    DateTimeOffset Started,
    TimeSpan Length
)
{
    /// <summary>Time left; negative when it is over, by how long.</summary>
    public TimeSpan Left(DateTimeOffset now) => Length - (now - Started);

    /// <summary>Whether it is over.</summary>
    public bool IsOver(DateTimeOffset now) => Left(now) <= TimeSpan.Zero;

    /// <summary>Whether it began later than the clock says now: the clock was set back since, and the time left is not known.</summary>
    public bool IsAhead(DateTimeOffset now) => Started > now;

    /// <summary>As it is kept on the device.</summary>
    public string Write() =>
        EntryJson
            .Value(json =>
            {
                json.WriteStartObject();
                json.WriteString("job", Job);
                json.WriteString("point", Point);
                json.WriteString("title", Title);
                json.WriteString("started", Started.ToString("O", CultureInfo.InvariantCulture));
                json.WriteNumber("seconds", (long)Length.TotalSeconds);
                json.WriteEndObject();
            })
            .GetRawText();

    /// <summary>A timer as it was kept; null when the text is none.</summary>
    public static BenchTimer? Read(string id, string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            return new(
                id,
                root.GetProperty("job").GetString()!,
                root.GetProperty("point").GetString()!,
                root.GetProperty("title").GetString()!,
                DateTimeOffset.ParseExact(root.GetProperty("started").GetString()!, "O", CultureInfo.InvariantCulture),
                TimeSpan.FromSeconds(root.GetProperty("seconds").GetInt64())
            );
        }
        catch (Exception unread)
            when (unread
                    is JsonException
                        or KeyNotFoundException
                        or InvalidOperationException
                        or FormatException
                        or ArgumentNullException
            )
        {
            return null;
        }
    }

    /// <summary>A time for the eye: <c>4:05</c>, <c>1:02:30</c>; without its sign.</summary>
    public static string Show(TimeSpan time)
    {
        // a second that has begun is shown until it is over
        var seconds = (long)Math.Ceiling(Math.Abs(time.TotalSeconds) - 1e-9);
        return seconds >= 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }
}
