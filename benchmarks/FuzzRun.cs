using System.Diagnostics;
using System.Text.Json;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Benchmarks;

/// <summary>Broken requests for as long as is given, from all check cases.</summary>
internal static class FuzzRun
{
    private const string Cases = "tests/Handbook.Tests/Cases";

    /// <summary>Prints the counts; the number of faults is the exit code's business. To be started at the root of the repository.</summary>
    public static int Print(double seconds, int seed)
    {
        var whole = Directory
            .GetFiles(Cases, "*.json")
            .Order(StringComparer.Ordinal)
            .SelectMany(f => CheckCases.In(JsonDocument.Parse(File.ReadAllText(f)).RootElement))
            .Select(c => (c.Calculation.Name, c.Given.GetRawText()))
            .ToArray();
        var requests = new BrokenRequests(whole, seed);
        var tally = new BrokenRequestTally();
        for (var from = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(from).TotalSeconds < seconds; )
        {
            var (calculation, request) = requests.Next();
            tally.Ask(calculation, request);
        }
        var all = tally.Answered + tally.Refused + tally.Malformed + tally.NotJson + tally.Faults.Count;
        Console.WriteLine(
            $"seed {seed}: {all} requests: {tally.Answered} answered, {tally.Refused} refused, {tally.Malformed} malformed, {tally.NotJson} not JSON"
        );
        Console.WriteLine($"slowest: {tally.Slowest.Calculation}, {tally.Slowest.Time.TotalMilliseconds:0} ms");
        Console.WriteLine($"faults: {tally.Faults.Count}");
        foreach (var fault in tally.Faults.Take(20))
            Console.WriteLine(fault);
        return tally.Faults.Count == 0 ? 0 : 1;
    }
}
