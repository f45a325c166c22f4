namespace Witnessmark.Bench.Times;

/// <summary>What a point is expected to take: the book's time, moved towards the shop's own and the technician's own as these become known.</summary>
/// <remarks>
/// <para><b>Formula.</b> y = ln(time) of one doing; y ~ N(φ_k, σ²) of technician k; φ_k ~ N(θ, σ²/m) about the shop; θ ~ N(ln book, σ²/n₀).
/// With weights w_i of k's doings, n_k = Σw_i and ȳ_k = Σw_i·y_i/n_k:<br/>
/// θ = (n₀·ln book + Σ_k ω_k·ȳ_k)/(n₀ + Σ_k ω_k), ω_k = n_k·m/(n_k + m); φ_k = (m·θ + n_k·ȳ_k)/(m + n_k). Planned is exp(φ_k), or exp(θ)
/// for whoever has no time of their own. All w_i = 1 is the exact posterior mean of this model. Robust: w_i = min(1, c·σ/|y_i − φ_k|),
/// repeated until nothing moves, is the mode under Huber's likelihood, which is one hill, so that where it begins is no matter.</para>
/// <para><b>Units.</b> Times in seconds, above zero; n₀ and m count doings: the book's word weighs as much as n₀ = 2 of them and the shop's as
/// m = 4. σ = 0.35: two doings in three lie within 35 % of the usual. The three are own estimates, no source.</para>
/// <para><b>Source.</b> Shrinkage to a prior mean: Efron and Morris, Stein's Paradox in Statistics, Scientific American 236 (1977); normal model
/// of two levels with known variances: Gelman et al., Bayesian Data Analysis, 3rd ed., 5.4 (both from memory). Huber, Robust estimation of
/// a location parameter, Ann. Math. Statist. 35 (1964) 73–101; c = 1.345 for 95 % efficiency at the normal distribution.</para>
/// <para><b>Valid when</b> a time is as often twice as half the usual. Times beyond ten times, or below a tenth of the book's, are left
/// out: work laid down, or written down afterwards; at that σ no undisturbed doing lies there. exp(φ) is the time in the middle,
/// not the mean of many.</para>
/// </remarks>
public static class TimeShrinkage
{
    /// <summary>n₀: how many doings the book's time weighs.</summary>
    public const double BookWeight = 2;

    /// <summary>m: how many doings of one technician the shop's time weighs.</summary>
    public const double ShopWeight = 4;

    /// <summary>σ of ln(time) from one doing to the next.</summary>
    public const double Scatter = 0.35;

    /// <summary>c: from how many σ on a time counts less.</summary>
    public const double Far = 1.345;

    /// <summary>Beyond so many times the book's time, or below that part of it, it was no undisturbed doing.</summary>
    public const double Disturbed = 10;

    private const int MostRounds = 500;
    private const double Still = 1e-12;

    /// <summary>The shop's time and each technician's.</summary>
    /// <param name="book">Seconds, above zero.</param>
    /// <param name="times">Seconds by technician, each above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is not above zero.</exception>
    public static Shrunk Of(double book, IReadOnlyDictionary<string, IReadOnlyList<double>> times)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(book);
        var logs = times.ToDictionary(
            t => t.Key,
            t => t.Value.Where(s => Undisturbed(s, book)).Select(s => Math.Log(s)).ToArray()
        );
        var at = Round(Math.Log(book), logs, _ => 1);
        for (var round = 0; round < MostRounds; round++)
        {
            var now = at;
            at = Round(Math.Log(book), logs, y => now.Weight(y.Technician, y.Log));
            if (at.Moved(now) < Still)
                break;
        }
        return new(
            Math.Exp(at.Shop),
            at.Own.ToDictionary(o => o.Key, o => Math.Exp(o.Value)),
            logs.ToDictionary(l => l.Key, l => l.Value.Length)
        );
    }

    private static bool Undisturbed(double seconds, double book)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seconds);
        return seconds <= book * Disturbed && seconds >= book / Disturbed;
    }

    private static Levels Round(
        double book,
        Dictionary<string, double[]> logs,
        Func<(string Technician, double Log), double> weight
    )
    {
        var groups = logs.Where(l => l.Value.Length > 0)
            .Select(l =>
            {
                var weights = l.Value.Select(y => weight((l.Key, y))).ToArray();
                var count = weights.Sum();
                return (l.Key, Count: count, Mean: l.Value.Zip(weights, (y, w) => y * w).Sum() / count);
            })
            .ToArray();
        var (sum, total) = (BookWeight * book, BookWeight);
        foreach (var (_, count, mean) in groups)
        {
            var omega = count * ShopWeight / (count + ShopWeight);
            (sum, total) = (sum + omega * mean, total + omega);
        }
        var shop = sum / total;
        return new(
            shop,
            groups.ToDictionary(g => g.Key, g => (ShopWeight * shop + g.Count * g.Mean) / (ShopWeight + g.Count))
        );
    }

    private sealed record Levels(double Shop, Dictionary<string, double> Own)
    {
        public double Weight(string technician, double log)
        {
            var away = Math.Abs(log - Own[technician]);
            return away <= Far * Scatter ? 1 : Far * Scatter / away;
        }

        public double Moved(Levels from) =>
            Own.Select(o => Math.Abs(o.Value - from.Own[o.Key])).Append(Math.Abs(Shop - from.Shop)).Max();
    }
}

/// <summary>What was learnt of one point, in seconds.</summary>
/// <param name="Shop">For whoever has no time of their own.</param>
/// <param name="Own">For each technician with a time that counts.</param>
/// <param name="Counted">How many times counted, by technician.</param>
public sealed record Shrunk(
    double Shop,
    IReadOnlyDictionary<string, double> Own,
    IReadOnlyDictionary<string, int> Counted
);
