using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>The straight line S² = A − c·n through trials, with what its uncertainty needs. Millimetres and turns throughout.</summary>
internal readonly record struct SlackLine
{
    private double AtLast { get; init; }
    private double C { get; init; }
    private Func<double, double> Deviation { get; init; }

    // Variances of the two, and their covariance, for bounds that hold far from the trials too.
    private double VarianceAtLast { get; init; }
    private double VarianceOfC { get; init; }
    private double Covariance { get; init; }

    /// <summary>c.</summary>
    public TurnSlackLaw Law => new(C);

    /// <summary>How many of its standard deviations the trials moved the slack squared.</summary>
    public double MoveInDeviations { get; private init; }

    /// <summary>Weighted sum of squared deviations from the line, for three trials and more.</summary>
    public double? ChiSquare { get; private init; }

    /// <summary>The same for all trials but one, three trials and more; NaN where the rest would make no line.</summary>
    public double[]? ChiSquareWithout { get; private init; }

    /// <summary>
    /// Turns between which the slack is reached, at z standard deviations: the roots of (A − S² − c·n)² = z²·var(A − c·n)
    /// (Fieller). Null when c itself is not z of its deviations from zero.
    /// </summary>
    public (Turns Low, Turns High)? Bounds(Length slack, double z)
    {
        var gap = AtLast - slack.Millimetres * slack.Millimetres;
        var square = C * C - z * z * VarianceOfC;
        var half = C * gap - z * z * Covariance;
        var rest = gap * gap - z * z * VarianceAtLast;
        if (square <= 0)
            return null;
        var root = Math.Sqrt(Math.Max(0, half * half - square * rest));
        return (new((half - root) / square), new((half + root) / square));
    }

    /// <summary>Turns from the last trial to a slack.</summary>
    public Turns TurnsTo(Length slack) => new((AtLast - slack.Millimetres * slack.Millimetres) / C);

    /// <summary>One standard deviation of these turns.</summary>
    public Turns TurnsUncertainty(Length slack) => new(Deviation(slack.Millimetres * slack.Millimetres));

    /// <summary>The line through two trials; null when both stand at the same turns.</summary>
    public static SlackLine? Through(Trial first, Trial second, Length slackUncertainty)
    {
        var n = second.Turns.Count - first.Turns.Count;
        if (n == 0)
            return null;
        var (s0, s1, sigma) = (first.Slack.Millimetres, second.Slack.Millimetres, slackUncertainty.Millimetres);
        var drop = s0 * s0 - s1 * s1;
        var (v0, v1) = (4 * s0 * s0 * sigma * sigma, 4 * s1 * s1 * sigma * sigma);
        return new SlackLine
        {
            AtLast = s1 * s1,
            C = drop / n,
            VarianceAtLast = v1,
            VarianceOfC = (v0 + v1) / (n * n),
            Covariance = -v1 / n,
            MoveInDeviations = Math.Abs(drop) / (2 * sigma * Math.Sqrt(s0 * s0 + s1 * s1)),
            Deviation = target =>
            {
                var byFirst = -2 * n * s0 * (s1 * s1 - target) / (drop * drop);
                var bySecond = 2 * n * s1 * (s0 * s0 - target) / (drop * drop);
                return sigma * Math.Sqrt(byFirst * byFirst + bySecond * bySecond);
            },
        };
    }

    /// <summary>The weighted least-squares line; null when all stand at the same turns.</summary>
    public static SlackLine? Fitted(ReadOnlySpan<Trial> trials, Length slackUncertainty)
    {
        var variance = slackUncertainty.Millimetres * slackUncertainty.Millimetres;
        double w = 0,
            wx = 0,
            wy = 0;
        foreach (var trial in trials)
        {
            var weight = Weight(trial, variance);
            w += weight;
            wx += weight * trial.Turns.Count;
            wy += weight * Squared(trial, variance);
        }
        var (xm, ym) = (wx / w, wy / w);
        double sxx = 0,
            sxy = 0;
        foreach (var trial in trials)
        {
            var weight = Weight(trial, variance);
            var x = trial.Turns.Count - xm;
            sxx += weight * x * x;
            sxy += weight * x * (Squared(trial, variance) - ym);
        }
        if (sxx == 0)
            return null;
        var c = -sxy / sxx;
        var a = ym + c * xm;
        var last = trials[^1].Turns.Count;
        var chiSquare = ChiSquared(trials, variance, a, c);
        double[] WithoutEach(ReadOnlySpan<Trial> all, double whole)
        {
            var without = new double[all.Length];
            for (var i = 0; i < all.Length; i++)
            {
                var (x, weight) = (all[i].Turns.Count, Weight(all[i], variance));
                var miss = Squared(all[i], variance) - a + c * x;
                var free = 1 - weight * (1 / w + (x - xm) * (x - xm) / sxx);
                without[i] = free > 1e-9 ? whole - weight * miss * miss / free : double.NaN;
            }
            return without;
        }
        return new SlackLine
        {
            AtLast = a - c * last,
            C = c,
            VarianceAtLast = 1 / w + (last - xm) * (last - xm) / sxx,
            VarianceOfC = 1 / sxx,
            Covariance = -(last - xm) / sxx,
            MoveInDeviations = Math.Abs(c) * Math.Sqrt(sxx),
            ChiSquare = chiSquare,
            ChiSquareWithout = WithoutEach(trials, chiSquare),
            Deviation = target =>
            {
                var x = (a - target) / c - xm;
                return Math.Sqrt(1 / w + x * x / sxx) / Math.Abs(c);
            },
        };
    }

    private static double ChiSquared(ReadOnlySpan<Trial> trials, double variance, double a, double c)
    {
        var sum = 0.0;
        foreach (var trial in trials)
        {
            var miss = Squared(trial, variance) - a + c * trial.Turns.Count;
            sum += Weight(trial, variance) * miss * miss;
        }
        return sum;
    }

    // A reading with error σ squares to S² + σ² on average: taking σ² off removes that bias.
    private static double Squared(Trial trial, double variance) =>
        trial.Slack.Millimetres * trial.Slack.Millimetres - variance;

    private static double Weight(Trial trial, double variance) =>
        1 / (4 * trial.Slack.Millimetres * trial.Slack.Millimetres * variance + 2 * variance * variance);
}
