using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>coolant-mix</c>.</summary>
internal static class CoolantMixContract
{
    private static readonly Input<Volume> System = Take.Positive<Volume>("systemVolume", "what the system holds");
    private static readonly Input<Ratio> Now = GlycolShare.Taken("fractionNow", "glycol by volume now");
    private static readonly Input<Ratio> Wanted = GlycolShare.Taken("fractionWanted", "glycol by volume wanted");
    private static readonly Input<Ratio> FilledWith = GlycolShare
        .Taken("concentrateFraction", "glycol in what is filled in; 0 % is water")
        .Or(new(1), "100 %");

    public static Calculation Calculation { get; } =
        new(
            "coolant-mix",
            "Fluids",
            "How much coolant to drain and replace to reach another share of glycol.",
            "own derivation: balance of the glycol",
            typeof(CoolantMix),
            [System, Now, Wanted, FilledWith],
            [new("drain", "L", "of the mixture"), new("add", "L", "of concentrate or water")],
            given =>
                Reply.To(
                    CoolantMix.Of(given.Of(System), given.Of(Now), given.Of(Wanted), given.Of(FilledWith)),
                    r => new Gives().With("drain", r.Volume, "L").With("add", r.Volume, "L")
                )
        );
}
