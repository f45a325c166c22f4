using MathNet.Numerics.RootFinding;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>
/// The exact geometry of a chain round two sprockets: tangent runs on arcs of radius z·p/2π, and legs that stay tangent
/// (they wrap and unwrap) when the middle of one run is moved. Millimetres and radians throughout.
/// </summary>
internal readonly record struct ChainLoop
{
    // Below this excess √(2Le) is exact to 1e-10 mm, while the lengths of the legs begin to cancel.
    private const double ClosedFormBelow = 1e-6;
    private const double Accuracy = 1e-12;
    private const int Iterations = 200;

    private readonly double front;
    private readonly double rear;
    private readonly double centre;

    private ChainLoop(double front, double rear, double centre) =>
        (this.front, this.rear, this.centre) = (front, rear, centre);

    /// <summary>The loop, or null when the sprockets touch.</summary>
    public static ChainLoop? Between(Sprockets sprockets, Length centreDistance) =>
        centreDistance.Millimetres > sprockets.FrontRadius + sprockets.RearRadius
            ? new(sprockets.FrontRadius, sprockets.RearRadius, centreDistance.Millimetres)
            : null;

    /// <summary>Half the angle between the two runs, β.</summary>
    public double WrapAngle => Math.Asin((rear - front) / centre);

    /// <summary>Length of one tangent run, L.</summary>
    public double Run => centre * Math.Cos(WrapAngle);

    /// <summary>Length of the taut loop, T; it grows by 2 cos β for each length of centre distance.</summary>
    public double Taut => 2 * Run + (Math.PI + 2 * WrapAngle) * rear + (Math.PI - 2 * WrapAngle) * front;

    /// <summary>Slack for a chain longer than the taut loop by an excess of zero or more; null when it is too long to tell.</summary>
    public Reach? Slack(double excess)
    {
        var half = Math.Sqrt(2 * Run * excess) / 2;
        if (excess < ClosedFormBelow)
            return new(half, half);
        return excess > LargestExcess ? null : new(Reached(excess, Deepest), Reached(excess, -Deepest));
    }

    /// <summary>The excess that gives a slack of zero or more; null when the slack is too large for this loop.</summary>
    public double? ExcessFor(double slack)
    {
        var loop = this;
        var widest = Math.Sqrt(LargestExcess);
        if (slack > Total(widest))
            return null;
        // In the root of the excess the slack is nearly a straight line.
        var root = slack == 0 ? 0 : Brent.FindRoot(s => loop.Total(s) - slack, 0, widest, Accuracy, Iterations);
        return root * root;
    }

    /// <summary>dS/dC at constant chain length, from the implicit function of each leg.</summary>
    public double SlackPerCentreDistance(Reach reach) => Moved(reach.Out) - Moved(-reach.In);

    // Deeper than the other run, or than a sprocket that the middle would come to touch, nobody can push the chain.
    private double Deepest
    {
        get
        {
            var x = Run / 2;
            return Math.Min(front + rear, Math.Min(Clear(front, x), Clear(rear, x)));
        }
    }

    private double LargestExcess => Math.Min(Excess(Deepest), Excess(-Deepest));

    private static double Clear(double r, double x) => x >= r ? double.PositiveInfinity : r - Math.Sqrt(r * r - x * x);

    private double Total(double rootOfExcess) =>
        Slack(Math.Min(rootOfExcess * rootOfExcess, LargestExcess)) is { } reach ? reach.Out + reach.In : double.NaN;

    // How much chain the middle at h takes beyond the straight run; h counts out of the loop, so an inward push is negative.
    private double Excess(double h) => Leg(front, Run / 2, h).Length + Leg(rear, Run / 2, h).Length - Run;

    private double Reached(double excess, double deepest)
    {
        var loop = this;
        if (excess >= Excess(deepest))
            return Math.Abs(deepest);
        return Math.Abs(
            Brent.FindRoot(
                h => loop.Excess(h) - excess,
                Math.Min(0, deepest),
                Math.Max(0, deepest),
                Accuracy,
                Iterations
            )
        );
    }

    private double Moved(double h)
    {
        var (_, first) = Leg(front, Run / 2, h);
        var (_, second) = Leg(rear, Run / 2, h);
        var byRun = (Math.Cos(first) + Math.Cos(second)) / 2 - 1;
        var cosine = Math.Cos(WrapAngle);
        return (-2 * cosine - byRun / cosine) / (Math.Sin(first) + Math.Sin(second));
    }

    // From the point of contact at rest to the middle, less what unwraps; and the angle at which the leg leaves.
    private static (double Length, double Angle) Leg(double r, double x, double h)
    {
        var d = Math.Sqrt(x * x + (h + r) * (h + r));
        var angle = Math.Atan2(h + r, x) - Math.Asin(Math.Min(1, r / d));
        return (Math.Sqrt(Math.Max(0, d * d - r * r)) - r * angle, angle);
    }
}

/// <summary>How far the middle of a run can be moved out of the loop and into it, in mm.</summary>
internal readonly record struct Reach(double Out, double In)
{
    /// <summary>The total movement.</summary>
    public double Slack => Out + In;
}
