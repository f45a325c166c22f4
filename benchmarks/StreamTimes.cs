using System.Text;
using System.Text.Json;
using Witnessmark.Calc;

namespace Witnessmark.Benchmarks;

/// <summary><c>calc stream</c> over many requests in memory, beside the same lines only parsed and the same replies only written.</summary>
internal static class StreamTimes
{
    private const int Lines = 5_000;
    private const int Rounds = 100;

    /// <summary>Requests a second that a stream must bear.</summary>
    private const double Bar = 50_000;

    private static readonly (string Name, string Given)[] Requests =
    [
        ("verdict", """{"value":"5.1 mm","standardUncertainty":"0.1 mm","limit":{"min":"4.5 mm","max":"5.5 mm"}}"""),
        (
            "chain-adjustment",
            """{"trials":[{"turns":0,"slack":"50 mm"},{"turns":2,"slack":"20 mm"}],"target":"22 mm","slackUncertainty":"1 mm"}"""
        ),
    ];

    public static void Print()
    {
        Console.WriteLine($"{"", -18} requests/s   of {Bar:0}/s   JSON alone/s   times");
        foreach (var (name, given) in Requests)
            Line(name, given);
    }

    private static void Line(string name, string given)
    {
        var text = new StringBuilder();
        for (var i = 0; i < Lines; i++)
            text.Append($$"""{"id":{{i}},"calculation":"{{name}}","given":{{given}}}""").Append('\n');
        var requests = Encoding.UTF8.GetBytes(text.ToString());
        using var replies = new MemoryStream();
        Batch.Run(new MemoryStream(requests), replies);
        var reply = Encoding.UTF8.GetString(replies.ToArray()).Split('\n');
        if (reply.Length != Lines + 1 || !reply.All(r => r.Length == 0 || r.Contains("\"gives\"")))
            throw new InvalidOperationException(reply[0]);
        var ours = Lines / Watch.Least(Rounds, () => Batch.Run(new MemoryStream(requests), Stream.Null)) * 1000;
        var alone = Lines / Watch.Least(Rounds, () => JsonAlone(requests, reply[0])) * 1000;
        Console.WriteLine($"{name, -18} {ours, 10:0} {ours / Bar, 12:0.00} {alone, 14:0} {alone / ours, 7:0.0}");
    }

    // As the stream does: each line parsed, one reply written to a buffer for each.
    private static void JsonAlone(byte[] requests, string reply)
    {
        using var told = JsonDocument.Parse(reply);
        using var buffered = new BufferedStream(Stream.Null, 1 << 16);
        using var writer = new Utf8JsonWriter(buffered, new JsonWriterOptions { SkipValidation = true });
        var left = requests.AsMemory();
        while (left.Length > 0)
        {
            var end = left.Span.IndexOf((byte)'\n');
            using (JsonDocument.Parse(left[..end]))
                told.RootElement.WriteTo(writer);
            writer.Flush();
            writer.Reset();
            buffered.WriteByte((byte)'\n');
            left = left[(end + 1)..];
        }
    }
}
