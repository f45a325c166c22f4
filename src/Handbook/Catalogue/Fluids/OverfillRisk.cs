using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The overfill risk as the two filling calculations take it.</summary>
internal static class OverfillRisk
{
    public static Input<double> Taken { get; } =
        Take.Number("overfillRisk", "probability of overfilling that is accepted, above 0, at most 0.5", 0, 0.5)
            .Or(OilFirstFill.UsualRisk, "0.01");

    public static double In(Given given) =>
        given.Of(Taken) is > 0 and var risk ? risk : throw given.Wrong(Taken.Name, "0", "above 0, at most 0.5");
}
