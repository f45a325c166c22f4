using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Client.Parts;

namespace Witnessmark.Client.Bench;

/// <summary>One number of a correction, with its direction where there is one.</summary>
/// <param name="Label">What was turned or added.</param>
/// <param name="Unit"><c>turns</c> or <c>L</c>.</param>
/// <param name="Ways">Names of the directions, tightening first; null where there is one only.</param>
public sealed record Moved(string Label, string Unit, (string Plus, string Minus)? Ways)
{
    /// <summary>Digits as typed or taken over.</summary>
    public string Text { get; set; } = "";

    /// <summary>Whether it went the second way.</summary>
    public bool Backwards { get; set; }

    internal string Signed => Backwards ? "-" + Text : Text;
}

/// <summary>A correction on its way: prefilled from what was proposed, and changed to what was really done.</summary>
public sealed class TurnsDraft
{
    public static KeyRules Rules => new(3, Say($"Correction"), false, 5);
    private readonly Point point;

    public TurnsDraft(PointState state)
    {
        point = state.Point;
        var proposal = state.Advice?.Proposal;
        Numbers = point.CorrectedBy switch
        {
            "chain-adjustment" => [Turn(BenchWords.BothAdjusters, proposal?.Left, ChainWays)],
            "axle-alignment" =>
            [
                Turn(BenchWords.LeftAdjuster, proposal?.Left, ChainWays),
                Turn(BenchWords.RightAdjuster, proposal?.Right, ChainWays),
            ],
            "cable-free-play" => [Turn(BenchWords.Adjuster, proposal?.Left, CableWays)],
            "oil-top-up" => [Filled(new(BenchWords.Added, "L", null), proposal?.AddLitres)],
            _ => [],
        };
    }

    /// <summary>Empty when the correction is told in words.</summary>
    public IReadOnlyList<Moved> Numbers { get; }

    public bool Complete => Numbers.All(n => TypedNumber.Stands(n.Text));

    public JsonElement Body =>
        Numbers switch
        {
            [{ Unit: "L" } added] => EntryBody.Added(point.Id, $"{added.Text} L"),
            [var both] => EntryBody.Turns(point.Id, both.Signed),
            [var left, var right] => EntryBody.SideTurns(point.Id, left.Signed, right.Signed),
            _ => throw new InvalidOperationException("A correction in words has no numbers."),
        };

    private static (string, string) ChainWays => (BenchWords.Tighter, BenchWords.Back);
    private static (string, string) CableWays => (Say($"out (less play)"), Say($"back (more play)"));

    private static Moved Turn(string label, double? turns, (string, string) ways) =>
        Filled(new(label, "turns", ways), turns);

    private static Moved Filled(Moved moved, double? value)
    {
        if (value is { } known)
            (moved.Text, moved.Backwards) = (
                Math.Abs(moved.Ways is null ? Math.Floor(known * 100 + 1e-6) / 100 : Math.Round(known, 2))
                    .ToString("0.##", CultureInfo.InvariantCulture),
                known < 0
            );
        return moved;
    }
}
