using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>What to set the torque wrench to.</summary>
internal static class TorqueAdvice
{
    private static readonly Unit NewtonMetre = UnitTable.Named("N·m");

    public static Advice? Of(Situation situation)
    {
        if (situation.Current is { Opinion.Verdict: not VerdictWord.Outside })
            return null;
        if (situation.Figure is not { Value: { } value } figure || figure.Unit.Dimension != Dimension.Torque)
            return Advise.Cannot($"The figure sheet has no torque for this fastener.");
        var torque = new Torque(figure.Unit.ToBase(value));
        var setting = TorqueSetting.For(torque).Setting.NewtonMetres;
        var tooTight =
            situation.Current is { Opinion: { Value: { } was, Unit: { } unit } } && unit.ToBase(was) > setting;
        return new(
            null,
            $"Set the wrench to {Numerals.With(setting, NewtonMetre, 1)}",
            [
                $"Straight on, without an adapter beside the axis: with one the setting changes (calc torque-setting).",
                .. tooTight
                    ?
                    [
                        $"Loosen it fully before tightening again: a joint that was too tight is not put right by turning back. Look at the thread.",
                    ]
                    : Array.Empty<Sentence>(),
            ],
            true,
            null,
            null,
            [
                $"setting = torque × L/(L + E·cos θ) = {Numerals.Plain(torque.NewtonMetres, 1)} × 1 (no extension)",
                $"handbook, torque-setting",
            ],
            new(null, null, null, setting),
            null
        );
    }
}
