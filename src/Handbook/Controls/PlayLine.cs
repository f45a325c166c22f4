namespace Witnessmark.Handbook.Controls;

/// <summary>The straight line play = A − c·n through trials. Millimetres and turns throughout.</summary>
/// <param name="PerTurn">c.</param>
/// <param name="AtLast">Play on the line at the last trial.</param>
/// <param name="FromMean">Turns from the mean of the trials to the last.</param>
/// <param name="Sxx">Sum of squared turns from their mean.</param>
/// <param name="Count">How many trials.</param>
internal readonly record struct PlayLine(double PerTurn, double AtLast, double FromMean, double Sxx, int Count)
{
    /// <summary>Turns from the last trial to a play.</summary>
    public double TurnsTo(double play) => (AtLast - play) / PerTurn;

    /// <summary>One standard deviation of these turns, with readings of deviation <paramref name="u"/>.</summary>
    public double TurnsDeviation(double play, double u)
    {
        var fromMean = TurnsTo(play) + FromMean;
        return u / Math.Abs(PerTurn) * Math.Sqrt(1.0 / Count + fromMean * fromMean / Sxx);
    }

    /// <summary>
    /// Turns between which the play is reached, at z standard deviations: the roots of (A − play − c·n)² = z²·var(A − c·n)
    /// (Fieller). Null when c itself is not z of its deviations from zero.
    /// </summary>
    public (double Low, double High)? Bounds(double play, double u, double z)
    {
        var gap = AtLast - play;
        var variance = z * z * u * u;
        var square = PerTurn * PerTurn - variance / Sxx;
        if (square <= 0)
            return null;
        var half = PerTurn * gap + variance * FromMean / Sxx;
        var rest = gap * gap - variance * (1.0 / Count + FromMean * FromMean / Sxx);
        var root = Math.Sqrt(Math.Max(0, half * half - square * rest));
        return ((half - root) / square, (half + root) / square);
    }

    /// <summary>The least-squares line; null when all trials stand at the same turns.</summary>
    public static PlayLine? Through(ReadOnlySpan<PlayTrial> trials)
    {
        double x = 0,
            y = 0;
        foreach (var trial in trials)
        {
            x += trial.Turns.Count / trials.Length;
            y += trial.Play.Millimetres / trials.Length;
        }
        double sxx = 0,
            sxy = 0;
        foreach (var trial in trials)
        {
            var fromMean = trial.Turns.Count - x;
            sxx += fromMean * fromMean;
            sxy += fromMean * (trial.Play.Millimetres - y);
        }
        if (sxx == 0)
            return null;
        var last = trials[^1].Turns.Count - x;
        return new PlayLine(-sxy / sxx, y + sxy / sxx * last, last, sxx, trials.Length);
    }
}
