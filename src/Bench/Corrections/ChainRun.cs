using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>
/// What the job's deeds teach about the chain: trials since the axle nut was last tight, the law learnt, and how the nut
/// shifted the slack. Tightening the nut moves the axle, so a run of trials ends there.
/// </summary>
/// <param name="Trials">Of the present run.</param>
/// <param name="Uncertainty">One standard deviation of a slack reading; null before the first.</param>
/// <param name="Law">From the last run that had two trials worth something; null before.</param>
/// <param name="NutPairs">Slack before and after each tightening of the nut.</param>
internal sealed record ChainRun(
    IReadOnlyList<Trial> Trials,
    Length? Uncertainty,
    TurnSlackLaw? Law,
    IReadOnlyList<NutPair> NutPairs
)
{
    public static ChainRun Of(Situation situation, Point slackPoint)
    {
        var nuts = slackPoint.AgainAfter.Where(id => IsNut(situation, id)).ToHashSet();
        var state = new Learning(situation);
        foreach (var deed in situation.Deeds)
        {
            if (deed is WasRead tightened && nuts.Contains(tightened.Point.Id))
                state.NutTightened();
            else if (deed is WasRead read && read.Point.Id == slackPoint.Id)
                state.Read(read.Reading);
            else if (deed is WasCorrected corrected && Moves(corrected.Point))
                state.Turned(corrected.Correction);
        }
        return state.Learnt;
    }

    private static bool IsNut(Situation situation, string id) =>
        situation.Book.Points.TryGetValue(id, out var point) && point.Reading.Kind == ReadingKind.Tighten;

    private static bool Moves(Point point) => point.CorrectedBy is "chain-adjustment" or "axle-alignment";

    private sealed class Learning(Situation situation)
    {
        private readonly List<Trial> trials = [];
        private readonly List<NutPair> pairs = [];
        private double turns;
        private Length? uncertainty;
        private Length? beforeNut;
        private bool movedSince;
        private TurnSlackLaw? law;

        public ChainRun Learnt => new([.. trials], uncertainty, law, pairs);

        public void Read(ReadingTaken reading)
        {
            if (reading.Opinion is not { Value: { } value, Unit: { } unit } opinion || value <= 0)
                return;
            var slack = new Length(unit.ToBase(value));
            if (opinion.StandardUncertainty is { } u)
                uncertainty = new Length(u * unit.Factor);
            if (beforeNut is { } before)
                pairs.Add(new(before, slack));
            beforeNut = null;
            movedSince = false;
            trials.Add(new(new Turns(turns), slack));
            if (trials.Count >= 2 && uncertainty is { Millimetres: > 0 } known)
                law = ChainAdjustment.From([.. trials], slack, known).Value?.Law ?? law;
        }

        public void Turned(CorrectionMade correction)
        {
            if (correction is { Left: { } left, Right: { } right })
            {
                turns += AtTheChain(left, right);
                movedSince = true;
            }
        }

        public void NutTightened()
        {
            // a slack that was turned away from since teaches nothing about the nut
            beforeNut = trials.Count > 0 && !movedSince ? trials[^1].Slack : null;
            trials.Clear();
            turns = 0;
        }

        // The chain stands nearer to one adjuster: that one moves it more (handbook, axle-alignment).
        private double AtTheChain(double left, double right)
        {
            var lean =
                situation.Geometry<Length>("chain-plane-offset") is { } offset
                && situation.Geometry<Length>("adjuster-distance") is { Millimetres: > 0 } apart
                    ? offset / apart
                    : 0;
            return (0.5 + lean) * left + (0.5 - lean) * right;
        }
    }
}
