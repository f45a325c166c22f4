using Witnessmark.Bench.Timing;

namespace Witnessmark.Client.Device;

/// <summary>Words of the timers.</summary>
internal static class TimerWords
{
    public const string Title = "Timers";
    public const string None = "No timer runs on this device. They are started at the points that need them.";
    public const string End = "End it";
    public const string Again = "From the start";
    public const string Understood = "Understood";
    public const string Ahead =
        "It was started later than this device's clock says now: the clock was set back. Look for yourself, or start it again.";

    public static string Start(PointWait wait) =>
        $"Start the timer, {Length(wait.Length)}{(wait.Key == WaitsOfPoint.Own ? "" : $": {wait.Title}")}";

    public static string All(int count) => count == 1 ? "1 timer" : $"{count} timers";

    public static string IsOver(BenchTimer timer) => $"{timer.Title} is over.";

    public static string Left(BenchTimer timer, DateTimeOffset now) =>
        timer.IsAhead(now) ? "?"
        : timer.IsOver(now) ? $"over {BenchTimer.Show(timer.Left(now))}"
        : BenchTimer.Show(timer.Left(now));

    public static string Of(BenchTimer timer) => $"Job {timer.Job} · {Length(timer.Length)}";

    private static string Length(TimeSpan length) =>
        length.TotalMinutes >= 1 && length.Seconds == 0 ? $"{length.TotalMinutes:0} min" : $"{length.TotalSeconds:0} s";
}
