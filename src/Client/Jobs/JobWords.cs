using Witnessmark.Bench.Jobs;

namespace Witnessmark.Client.Jobs;

/// <summary>Words of a job as a whole.</summary>
internal static class JobWords
{
    public const string Holds = "Before it can go";
    public const string MayGo = "Nothing keeps it. It can be released.";
    public const string Released = "Released";
    public const string ToRelease = "To the release";
    public const string Continue = "Go on";
    public const string BenchTime = "Bench time";
    public const string Point = "Point";
    public const string Limit = "Limit";
    public const string Found = "Found";
    public const string LeftAt = "Left at";
    public const string Why = "Why today";
    public const string State = "State";
    public const string Sheet = "Handover sheet (PDF)";
    public const string LogBook = "Log book";
    public const string Record = "Record for the owner";
    public const string Sticker = "Service sticker";
    public const string KeyTag = "Key tag";
    public const string NotUnderstood = "Kept, but not understood by this program";
    public const string Notes = "Notes";
    public const string AddNote = "Note on the job";
    public const string SaveNote = "Save note";
    public const string Anywhere = "As it stands";
    public const string Release = "Release";
    public const string ReleaseWhy =
        "With your name you say that every point above is proven, marked or left with a reason, and that the machine can be ridden.";
    public const string LeavesOpen =
        "It leaves with a “do not ride” campaign open. Tell the owner before they take it, and write down how it leaves.";
    public const string SecondWhy = "A second person looks at it themselves and signs too, here or on another device.";
    public const string SecondHere = "Second person at this device";
    public const string YourName = "Your name";
    public const string SignAs = "Write your name as it stands on this device.";
    public const string Undo = "Take back the last entry";

    public static string Number(string job) => $"Job {job}";

    public static string Purpose(string purpose) =>
        purpose == "handover" ? "Ready for its next owner" : Capital(purpose);

    /// <summary>The promise by the clock where there is one, else as it was said at arrival.</summary>
    public static string? PromisedWhen(JobState job) =>
        job.Day.Promise is { } promise
            ? Witnessmark.Bench.Day.ShopTime.Say(promise.At, DateTime.MinValue)
            : job.Arrival?.Promised;

    public static string Promised(string when) => $"promised {when}";

    public static string NotRead(int count) => count == 1 ? "1 point not read yet" : $"{count} points not read yet";

    public static string NotMarked(int count) =>
        count == 1 ? "1 point read, not marked yet" : $"{count} points read, not marked yet";

    public static string ReleasedBy(Release release) => $"Released by {release.Names}";

    public static string SignedFirst(string name) => $"Signed by {name}";

    public static string TimeLeft(TimeSpan left) =>
        left.TotalHours >= 1 ? $"{(int)left.TotalHours} h {left.Minutes} min left" : $"{left.Minutes} min left";

    public static string WaitsToo(TimeSpan waits) =>
        $"and {waits.TotalMinutes:0} min in which something settles or drains";

    public static string Minutes(TimeSpan hands) => $"{hands.TotalMinutes:0} min";

    public static string PaperMissing(int count) =>
        count == 1
            ? "1 entry of this job is not yet at the shop. The sheet is made there."
            : $"{count} entries of this job are not yet at the shop. The sheet is made there.";

    public static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];
}
