using System.Diagnostics;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>Twenty thousand broken requests; <c>benchmarks -- fuzz SECONDS</c> tries as many as there is time for.</summary>
public class BrokenRequestsTests
{
    private const int Count = 20_000;

    [Fact]
    public void Broken_requests_are_answered_refused_or_told_what_is_wrong()
    {
        var whole = CaseFiles.All.Select(c => (c.Calculation.Name, c.Given.GetRawText())).ToArray();
        var requests = new BrokenRequests(whole, seed: 1);
        var tally = new BrokenRequestTally();
        for (var i = 0; i < Count; i++)
        {
            var (calculation, request) = requests.Next();
            tally.Ask(calculation, request);
        }
        Assert.True(tally.Faults.Count == 0, string.Join("\n\n", tally.Faults.Take(5)));
        // Each kind of reply is met, or the changes are too mild or too wild to try anything
        Assert.All(
            [tally.Answered, tally.Refused, tally.Malformed, tally.NotJson],
            count => Assert.InRange(count, Count / 200, Count)
        );
    }

    [Fact]
    public void A_million_readings_are_told_how_many_may_be_given()
    {
        var values = string.Join(',', Enumerable.Repeat("\"5 mm\"", 1_000_000));
        var instrument = """{"resolution":"1 mm","permissibleError":"0 mm"}""";
        var from = Stopwatch.GetTimestamp();
        var reply = CaseFiles.Ask("reading", $$"""{"values":[{{values}}],"instrument":{{instrument}}}""");
        Assert.StartsWith("values: 1000000 elements; allowed: at most 10000", reply.Malformed);
        Assert.True(Stopwatch.GetElapsedTime(from) < BrokenRequestTally.Longest);
    }
}
