using Witnessmark.Bench.Jobs;

namespace Witnessmark.Client.Jobs;

/// <summary>Words of a job as a whole.</summary>
internal static class JobWords
{
    public static string Holds => Say($"Before it can go");
    public static string MayGo => Say($"Nothing keeps it. It can be released.");
    public static string Released => Say($"Released");
    public static string ToRelease => Say($"To the release");
    public static string Continue => Say($"Go on");
    public static string BenchTime => Say($"Bench time");
    public static string Point => Say($"Point");
    public static string Limit => Say($"Limit");
    public static string Found => Say($"Found");
    public static string LeftAt => Say($"Left at");
    public static string Why => Say($"Why today");
    public static string State => Say($"State");
    public static string Sheet => Say($"Handover sheet (PDF)");

    public static string SheetIn(string language) => Say($"Sheet in {language}");

    public static string SheetInUs => Say($"Sheet in US units");
    public static string SheetInMetric => Say($"Sheet in metric units");

    public static string LogBook => Say($"Log book");
    public static string Record => Say($"Record for the owner");
    public static string Sticker => Say($"Service sticker");
    public static string KeyTag => Say($"Key tag");
    public static string NotUnderstood => Say($"Kept, but not understood by this program");
    public static string Notes => Say($"Notes");
    public static string AddNote => Say($"Note on the job");
    public static string SaveNote => Say($"Save note");
    public static string Anywhere => Say($"As it stands");
    public static string Release => Say($"Release");
    public static string ReleaseWhy =>
        Say(
            $"With your name you say that every point above is proven, marked or left with a reason, and that the machine can be ridden."
        );
    public static string LeavesOpen =>
        Say(
            $"It leaves with a “do not ride” campaign open. Tell the owner before they take it, and write down how it leaves."
        );
    public static string SecondWhy =>
        Say($"A second person looks at it themselves and signs too, here or on another device.");
    public static string SecondHere => Say($"Second person at this device");
    public static string YourName => Say($"Your name");
    public static string SignAs => Say($"Write your name as it stands on this device.");
    public static string Undo => Say($"Take back the last entry");

    public static string Number(string job) => Say($"Job {job}");

    public static string Purpose(string purpose) =>
        purpose == "handover" ? Say($"Ready for its next owner") : Capital(Known(purpose));

    /// <summary>The promise by the clock where there is one, else as it was said at arrival.</summary>
    public static string? PromisedWhen(JobState job) =>
        job.Day.Promise is { } promise
            ? Known(Witnessmark.Bench.Day.ShopTime.Say(promise.At, DateTime.MinValue))
            : job.Arrival?.Promised;

    public static string Promised(string when) => Say($"promised {when}");

    public static string NotRead(int count) =>
        Say(Sentence.Count(count, $"1 point not read yet", $"{count} points not read yet"));

    public static string NotMarked(int count) =>
        Say(Sentence.Count(count, $"1 point read, not marked yet", $"{count} points read, not marked yet"));

    public static string ReleasedBy(Release release) => Say($"Released by {release.Names}");

    public static string SignedFirst(string name) => Say($"Signed by {name}");

    public static string TimeLeft(TimeSpan left) =>
        left.TotalHours >= 1
            ? Say($"{(int)left.TotalHours} h {left.Minutes} min left")
            : Say($"{left.Minutes} min left");

    public static string WaitsToo(TimeSpan waits) =>
        Say($"and {waits.TotalMinutes:0} min in which something settles or drains");

    public static string Minutes(TimeSpan hands) => Say($"{hands.TotalMinutes:0} min");

    public static string PaperMissing(int count) =>
        Say(
            Sentence.Count(
                count,
                $"1 entry of this job is not yet at the shop. The sheet is made there.",
                $"{count} entries of this job are not yet at the shop. The sheet is made there."
            )
        );

    public static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];
}
