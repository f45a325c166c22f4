using Witnessmark.Bench.Timing;

namespace Witnessmark.Client.Device;

/// <summary>Words of the timers.</summary>
internal static class TimerWords
{
    public static string Title => Say($"Timers");
    public static string None => Say($"No timer runs on this device. They are started at the points that need them.");
    public static string End => Say($"End it");
    public static string Again => Say($"From the start");
    public static string Understood => Say($"Understood");
    public static string Ahead =>
        Say(
            $"It was started later than this device's clock says now: the clock was set back. Look for yourself, or start it again."
        );

    public static string Start(PointWait wait) =>
        Say($"Start the timer, {Length(wait.Length)}{(wait.Key == WaitsOfPoint.Own ? "" : $": {Known(wait.Title)}")}");

    public static string All(int count) => Say(Sentence.Count(count, $"1 timer", $"{count} timers"));

    public static string IsOver(BenchTimer timer) => Say($"{timer.Title} is over.");

    public static string Left(BenchTimer timer, DateTimeOffset now) =>
        timer.IsAhead(now) ? "?"
        : timer.IsOver(now) ? Say($"over {BenchTimer.Show(timer.Left(now))}")
        : BenchTimer.Show(timer.Left(now));

    public static string Of(BenchTimer timer) => Say($"Job {timer.Job} · {Length(timer.Length)}");

    private static string Length(TimeSpan length) =>
        length.TotalMinutes >= 1 && length.Seconds == 0
            ? Say($"{length.TotalMinutes:0} min")
            : Say($"{length.TotalSeconds:0} s");
}
