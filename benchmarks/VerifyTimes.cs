using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Benchmarks;

/// <summary>
/// Checking a log book with 1,000 entries: allowed are 50 ms. Beside it what cannot be left out: reading the text as JSON, and one SHA-256
/// over all of it, by the libraries alone.
/// </summary>
internal static class VerifyTimes
{
    private const int EntriesOfJob = 1000;
    private const int Rounds = 41;

    public static void Print()
    {
        var text = LogBookFile.Write(BusyJob.Of(EntriesOfJob, []), BusyJob.Bench);
        if (LogBookFile.Verify(text).Word is not LogBookWord.Intact)
            throw new InvalidOperationException("The log book is not intact.");
        Console.WriteLine($"{EntriesOfJob} entries, {text.Length / 1000} kB");
        Console.WriteLine($"{"", -22} first ms  least ms  median ms  of 50 ms");
        var ours = Line("verify", () => LogBookFile.Verify(text));
        var alone = Line("JSON and SHA-256 alone", () => Alone(text));
        Console.WriteLine($"verify / alone: {ours / alone:0.0} times");
    }

    private static object Alone(string text)
    {
        using var read = JsonDocument.Parse(text);
        return (SHA256.HashData(Encoding.UTF8.GetBytes(text)), read.RootElement.GetProperty("visits").GetArrayLength());
    }

    private static double Line(string name, Func<object> asked)
    {
        List<double> times = [];
        for (var round = 0; round <= Rounds; round++)
        {
            var from = Stopwatch.GetTimestamp();
            GC.KeepAlive(asked());
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }
        var rest = times.Skip(1).Order().ToArray();
        var median = rest[rest.Length / 2];
        Console.WriteLine($"{name, -22} {times[0], 8:0.0} {rest[0], 9:0.0} {median, 10:0.0} {median / 50, 9:0.00}");
        return median;
    }
}
