using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Bench;

namespace Witnessmark.Client.FirstPoint;

/// <summary>Words of the loop by which the demo leads.</summary>
internal static class LoopWords
{
    public static string Title => Say($"The five steps of a point");
    public static string Invented => Say($"This workshop is invented");
    public static string InventedWhat =>
        Say(
            $"Its people, machines and figures are made up: nothing here can go wrong. One point shows how the work goes."
        );
    public static string Go => Say($"Do your first point");
    public static string OwnShop => Say($"Set up your own shop");
    public static string PutAway => Say($"Not now");
    public static string PutAwayWhat => Say($"Put the five steps away; they come back in the settings");
    public static string Rest => Say($"The rest of the job");
    public static string Lead => Say($"Lead me through the first point");
    public static string LeadWhere => Say($"In the invented workshop, at the chain of job 412.");

    public static string Of(LoopStep step) =>
        step switch
        {
            LoopStep.Figure => Say($"Figure"),
            LoopStep.Reading => Say($"Reading"),
            LoopStep.Verdict => Say($"Verdict"),
            LoopStep.Correction => Say($"Correction"),
            _ => Say(((Sentence)$"Mark").Meaning("the painted stripe")),
        };

    public static string Of(LoopStanding standing) =>
        standing switch
        {
            LoopStanding.Now => Say($"now"),
            LoopStanding.Done => Say(((Sentence)$"done").Meaning("of a step")),
            LoopStanding.NotNeeded => Say($"not needed"),
            _ => Say($"to come"),
        };

    /// <summary>The step that is to be done now, in a sentence, and how it is done.</summary>
    public static string Now(PointLoop loop, PointState state, AtPoint at) =>
        loop.Now switch
        {
            LoopStep.Figure when state.Figure is { } figure && !state.LacksFigure => Say(
                $"{figure.Short}: that is the figure. Read it as the words below say, and type it."
            ),
            LoopStep.Figure => Say($"No figure judges it yet. Give one, then a reading gets its verdict."),
            LoopStep.Reading when loop.Again => Say($"Work has moved it since: read it once more."),
            LoopStep.Reading => Say($"Type what you read, then save the reading."),
            LoopStep.Correction when at == AtPoint.TypingCorrection => Say(
                $"What was computed stands there. Change it to what you turned, and save it."
            ),
            LoopStep.Correction => Say(
                $"The verdict: {state.Current!.Opinion.Headline.Inside()}. Turn as computed below, then tap “{BenchWords.Corrected}”."
            ),
            LoopStep.Mark => Say(
                $"The verdict: {state.Current!.Opinion.Headline.Inside()}. Paint the stripe across the joint, then tap “{BenchWords.Mark}”."
            ),
            LoopStep.Verdict => Say($"The verdict: what was read cannot tell. Read it again."),
            _ when state.Left is { } left => BenchWords.LeftBecause(left.Why),
            _ => Say($"Marked: that was one point."),
        };

    /// <summary>For whoever has no chain at hand: what the invented one would show.</summary>
    public static string Try(int lowest, int highest) =>
        Say($"No chain at hand? The invented one shows {lowest} and {highest}.");
}
