using System.Text.Json;
using Microsoft.JSInterop;
using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Today;

/// <summary>The list of jobs as it is shown, in words: with it the next start begins, before the program is up (<c>last-jobs.js</c>).</summary>
/// <param name="Title">Over it.</param>
/// <param name="Note">That it is as it was.</param>
/// <param name="Opens">Said when one was tapped.</param>
/// <param name="Jobs">The jobs.</param>
internal sealed record LastJobs(string Title, string Note, string Opens, IReadOnlyList<LastJobs.Card> Jobs)
{
    /// <summary>As many as are looked through before the program is up.</summary>
    private const int Most = 20;

    /// <summary>One job.</summary>
    internal sealed record Card(string Href, string Machine, string State, string About);

    /// <summary>These jobs.</summary>
    public static LastJobs Of(IEnumerable<JobState> jobs) =>
        new(TodayWords.Title, TodayWords.AsSeenLast, TodayWords.OpensSoon, [.. jobs.Take(Most).Select(CardOf)]);

    /// <summary>Keeps them for the next start, or nothing.</summary>
    public static void Keep(IJSRuntime js, LastJobs? shown) =>
        ((IJSInProcessRuntime)js).InvokeVoid(
            "lastJobs.keep",
            shown is null ? null : JsonSerializer.Serialize(shown, DeviceJson.Default.LastJobs)
        );

    private static Card CardOf(JobState job) =>
        new($"jobs/{job.Job}", TodayWords.Machine(job), TodayWords.State(job), TodayWords.About(job));
}
