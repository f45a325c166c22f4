using System.Text;
using System.Text.Json;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Benchmarks;

/// <summary>
/// One call of a calculation: in C#, and as the server is asked, JSON text in and JSON text out. Beside it the price of JSON
/// alone: the same request parsed and the same reply written, nothing calculated.
/// </summary>
internal static class CallTimes
{
    /// <summary>What a call may take on the server, in microseconds.</summary>
    private const double Bar = 20;

    public static void PrintVerdict()
    {
        Head();
        var limit = new Limit(4.5, 5.5);
        Line(
            "verdict",
            """{"value":"5.1 mm","standardUncertainty":"0.1 mm","limit":{"min":"4.5 mm","max":"5.5 mm"}}""",
            () => Verdict.On(5.1, 0.1, limit)
        );
    }

    public static void PrintCorrection()
    {
        Head();
        Trial[] trials = [new(new(0), new(50)), new(new(2), new(20))];
        Line(
            "chain-adjustment",
            """
            {"trials":[{"turns":0,"slack":"50 mm"},{"turns":2,"slack":"20 mm"}],"target":"22 mm","slackUncertainty":"1 mm"}
            """,
            () => ChainAdjustment.From(trials, new(22), new(1))
        );
        var (level, marks) = (new OilLevel(0.2, 0.05), new MarkVolume(new Volume(0.5), new Volume(0.02)));
        Line(
            "oil-top-up",
            """{"level":0.2,"targetLevel":0.75,"levelDeviation":0.05,"betweenMarks":"0.5 L","betweenMarksDeviation":"0.02 L"}""",
            () => OilTopUp.Of(level, 0.75, marks)
        );
    }

    private static void Head() =>
        Console.WriteLine($"{"", -18}    in C# µs   bytes   in JSON µs   of the {Bar:0} µs   JSON alone µs   times");

    private static void Line<T>(string name, string request, Func<T> typed)
    {
        var calculation = Calculations.Named(name)!;
        var bytes = Encoding.UTF8.GetBytes(request);
        byte[] Asked()
        {
            using var parsed = JsonDocument.Parse(bytes);
            return Written(w => calculation.Ask(parsed.RootElement).ToJson().WriteTo(w));
        }
        using var reply = JsonDocument.Parse(Asked());
        if (reply.RootElement.TryGetProperty("wrong", out var wrong))
            throw new InvalidOperationException(wrong.GetString());
        byte[] JsonAlone()
        {
            using var parsed = JsonDocument.Parse(bytes);
            return Written(w => reply.RootElement.WriteTo(w));
        }
        var (inCode, inJson, alone) = (Watch.PerCall(typed), Watch.PerCall(Asked), Watch.PerCall(JsonAlone));
        Console.WriteLine(
            $"{name, -18} {inCode, 11:0.000} {Watch.Allocated(typed), 7} {inJson, 12:0.00} {inJson / Bar, 12:0.00} {alone, 15:0.00} {inJson / alone, 7:0.0}"
        );
    }

    private static byte[] Written(Action<Utf8JsonWriter> write)
    {
        var buffer = new System.Buffers.ArrayBufferWriter<byte>(512);
        using (var writer = new Utf8JsonWriter(buffer))
            write(writer);
        return buffer.WrittenSpan.ToArray();
    }
}
