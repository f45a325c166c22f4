namespace Witnessmark.Handbook.Catalogue;

/// <summary>The motion ratio as the calculations on springs take it.</summary>
internal static class MotionRatio
{
    public static Input<double> Taken { get; } =
        Take.Number("motionRatio", "wheel travel / spring travel, above 0; an upright fork 1", 0);

    public static double In(Given given) =>
        given.Of(Taken) is > 0 and var ratio ? ratio : throw given.Wrong(Taken.Name, "0", "above 0");
}
