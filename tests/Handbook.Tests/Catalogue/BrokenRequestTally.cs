using System.Diagnostics;
using System.Text.Json;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>What became of broken requests. Anything but an answer, a refusal or a complaint is a fault of the program.</summary>
public sealed class BrokenRequestTally
{
    /// <summary>No request may keep the processor busy for longer.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    public int Answered { get; private set; }
    public int Refused { get; private set; }
    public int Malformed { get; private set; }
    public int NotJson { get; private set; }

    /// <summary>The longest that one took, and which calculation it was.</summary>
    public (TimeSpan Time, string Calculation) Slowest { get; private set; }

    /// <summary>What should never be, with the request.</summary>
    public List<string> Faults { get; } = [];

    public void Ask(string calculation, byte[] request)
    {
        var from = Stopwatch.GetTimestamp();
        try
        {
            using var parsed = JsonDocument.Parse(request);
            Sort(Calculations.Named(calculation)!.Ask(parsed.RootElement), calculation, request);
        }
        catch (JsonException)
        {
            NotJson++;
        }
        catch (Exception fault)
        {
            Fault(fault.ToString(), calculation, request);
        }
        var took = Stopwatch.GetElapsedTime(from);
        if (took > Longest)
            took = Again(calculation, request);
        if (took > Slowest.Time)
            Slowest = (took, calculation);
        if (took > Longest)
            Fault($"took {took}", calculation, request);
    }

    // The clock on the wall also counts those who share the processor, so what was slow once gets a second hearing.
    private static TimeSpan Again(string calculation, byte[] request)
    {
        var from = Stopwatch.GetTimestamp();
        using var parsed = JsonDocument.Parse(request);
        _ = Calculations.Named(calculation)!.Ask(parsed.RootElement);
        return Stopwatch.GetElapsedTime(from);
    }

    private void Sort(Reply reply, string calculation, byte[] request)
    {
        var written = reply.ToJson().ToJsonString();
        if (reply.Malformed is { } complaint)
        {
            Malformed++;
            if (complaint != BrokenText.Complaint && !complaint.Contains("; allowed: "))
                Fault(complaint, calculation, request);
        }
        else if (reply.Refusal is { } refusal)
        {
            Refused++;
            if (refusal.Key.Length == 0 || !refusal.Because.ToString().EndsWith('.'))
                Fault(written, calculation, request);
        }
        else
        {
            Answered++;
            if (reply.Outputs is not { Count: > 0 })
                Fault(written, calculation, request);
        }
    }

    private void Fault(string what, string calculation, byte[] request) =>
        Faults.Add($"{calculation}: {what}\n{System.Text.Encoding.UTF8.GetString(request)}");
}
