namespace Witnessmark.Handbook.Tests.FinalDrive;

/// <summary>An oracle of its own: a closed chain around two circles, its lower run pushed out and in, by geometry alone.</summary>
internal sealed class ChainLoop(int frontTeeth, int rearTeeth, double pitch)
{
    private readonly double front = frontTeeth * pitch / (2 * Math.PI);
    private readonly double rear = rearTeeth * pitch / (2 * Math.PI);

    private double Beta(double centre) => Math.Asin((rear - front) / centre);

    private double Run(double centre) => centre * Math.Cos(Beta(centre));

    /// <summary>Length of the loop when taut.</summary>
    public double Taut(double centre) =>
        2 * Run(centre) + (Math.PI + 2 * Beta(centre)) * rear + (Math.PI - 2 * Beta(centre)) * front;

    /// <summary>Total movement of the middle of the lower run, found by bisection in both directions.</summary>
    public double Slack(double length, double centre)
    {
        var (excess, run) = (length - Taut(centre), Run(centre));
        double Miss(double h) => Leg(front, run / 2, h) + Leg(rear, run / 2, h) - run - excess;
        return Root(Miss, 0, 120) - Root(h => Miss(h), 0, -120);
    }

    /// <summary>The centre distance at which the loop has this slack.</summary>
    public double CentreFor(double slack, double length, double from, double to) =>
        Root(centre => slack - Slack(length, centre), from, to);

    // Length from the tangent point of the undisturbed run to the middle, pushed h out of the loop; the chain stays on the circle.
    private static double Leg(double r, double x, double h)
    {
        var d = Math.Sqrt(x * x + (h + r) * (h + r));
        return Math.Sqrt(d * d - r * r) - r * (Math.Atan2(h + r, x) - Math.Asin(r / d));
    }

    private static double Root(Func<double, double> f, double negative, double positive)
    {
        for (var i = 0; i < 200; i++)
        {
            var middle = (negative + positive) / 2;
            if (f(middle) < 0)
                negative = middle;
            else
                positive = middle;
        }
        return (negative + positive) / 2;
    }
}
