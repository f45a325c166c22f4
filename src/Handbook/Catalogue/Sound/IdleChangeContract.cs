using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>idle-change</c>.</summary>
internal static class IdleChangeContract
{
    private static readonly Input<Frequency> Before = Take.Positive<Frequency>(
        "before",
        "frequency or engine speed of the first recording, e.g. handlebar to the left"
    );
    private static readonly Input<Frequency> After = Take.Positive<Frequency>(
        "after",
        "the same of the second recording, e.g. handlebar to the right"
    );
    private static readonly Input<Frequency> BeforeUncertainty = Take.Quantity<Frequency>(
        "beforeUncertainty",
        "one standard deviation of before"
    );
    private static readonly Input<Frequency> AfterUncertainty = Take.Quantity<Frequency>(
        "afterUncertainty",
        "one standard deviation of after"
    );
    private static readonly Input<Frequency> Allowed = Take.Quantity<Frequency>(
        "allowed",
        "largest change that counts as none"
    );

    public static Calculation Calculation { get; } =
        new(
            "idle-change",
            "Sound",
            "Whether the idle changed between two recordings.",
            "JCGM 100:2008, 5.1.2; JCGM 106:2012, 7.2",
            typeof(IdleChange),
            [Before, After, BeforeUncertainty, AfterUncertainty, Allowed],
            [
                new("change", "Hz", "after less before"),
                new("uncertainty", "Hz", "one standard deviation of the change"),
                new("share", "%", "the change in per cent of before"),
                new("verdict", "same, changed or unproven", "with 95 % confidence"),
            ],
            given =>
            {
                var r = IdleChange.Between(
                    given.Of(Before),
                    given.Of(After),
                    given.Of(BeforeUncertainty),
                    given.Of(AfterUncertainty),
                    given.Of(Allowed)
                );
                return new Gives()
                    .With("change", r.Change, "Hz")
                    .With("uncertainty", r.Uncertainty, "Hz")
                    .With("share", r.Share, "%")
                    .With("verdict", Word(r.Call));
            }
        );

    private static string Word(Call call) =>
        call switch
        {
            Call.Inside => "same",
            Call.Outside => "changed",
            _ => call.Word(),
        };
}
