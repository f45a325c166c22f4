namespace Witnessmark.Bench.Kit;

/// <summary>A size of bottle on the shelf.</summary>
/// <param name="Litres">What one holds, more than zero.</param>
/// <param name="There">How many there are, zero or more.</param>
public sealed record BottleSize(double Litres, int There);

/// <summary>Which bottles to take.</summary>
/// <param name="Taken">How many of each size, in step with the sizes.</param>
/// <param name="Litres">What they hold in all.</param>
public sealed record Bottles(IReadOnlyList<int> Taken, double Litres);

/// <summary>Which bottles to take so that there is enough and as little as can be is left over in an opened one.</summary>
/// <remarks>
/// <para><b>Formula.</b> Over all whole n_i with 0 ≤ n_i ≤ there_i and Σ n_i·size_i ≥ needed: the least Σ n_i·size_i, then the fewest bottles
/// Σ n_i. Exact, by dynamic programming over whole millilitres: fewest(v) = the least number of bottles that hold v, bottles of one
/// size taken in bundles of 1, 2, 4, … so that each bundle is taken once or not; then the smallest v ≥ needed that can be held.</para>
/// <para><b>Units.</b> Litres; inside whole millilitres, the need rounded up and each size down, so that it never falls short by rounding.</para>
/// <para><b>Source.</b> Bounded knapsack by binary bundles: Martello and Toth, Knapsack Problems, Wiley 1990, 3.1 (from memory);
/// checked against all choices one by one.</para>
/// <para><b>Valid when</b> bottles are full. What is left over does not keep for ever once opened: brake fluid least of all.</para>
/// </remarks>
public static class BottleChoice
{
    /// <summary>No machine takes more at one point.</summary>
    public const double MostLitres = 200;

    /// <summary>Nothing larger is carried to a bench.</summary>
    public const double LargestBottle = 1000;

    private const int None = int.MaxValue;

    /// <summary>The bottles to take; null when all of them do not hold enough.</summary>
    /// <param name="needed">More than zero, at most <see cref="MostLitres"/>.</param>
    /// <param name="sizes">What is there.</param>
    /// <exception cref="ArgumentOutOfRangeException">The need or a size is outside its bounds.</exception>
    public static Bottles? For(double needed, IReadOnlyList<BottleSize> sizes)
    {
        if (!(needed > 0 && needed <= MostLitres))
            throw new ArgumentOutOfRangeException(nameof(needed), needed, $"Above zero, at most {MostLitres} L.");
        if (sizes.Any(s => !(s.Litres >= 0.001 && s.Litres <= LargestBottle) || s.There < 0))
            throw new ArgumentOutOfRangeException(nameof(sizes), $"A bottle holds 1 mL to 1000 L; none is the least.");
        var need = (int)Math.Ceiling(needed * 1000 - 1e-6);
        var bundles = Bundles(need, sizes);
        var fewest = new int[need + bundles.Select(b => b.Size).DefaultIfEmpty(0).Max() + 1];
        Array.Fill(fewest, None);
        fewest[0] = 0;
        var took = bundles.Select(b => Add(fewest, b)).ToList();
        var held = Array.FindIndex(fewest, need, f => f != None);
        return held < 0 ? null : Traced(held, bundles, took, sizes);
    }

    /// <summary>1, 2, 4, … of each size and the rest: every number up to the whole is a sum of some of them.</summary>
    private static List<Bundle> Bundles(int need, IReadOnlyList<BottleSize> sizes)
    {
        List<Bundle> bundles = [];
        foreach (var (index, size) in sizes.Index())
        {
            var each = (int)Math.Floor(size.Litres * 1000 + 1e-6);
            var left = Math.Min(size.There, (need + each - 1) / each);
            for (var count = 1; left > 0; count *= 2)
            {
                var taken = Math.Min(count, left);
                bundles.Add(new(index, taken, taken * each));
                left -= taken;
            }
        }
        return bundles;
    }

    /// <summary>Takes a bundle in where it helps; says where it did.</summary>
    private static bool[] Add(int[] fewest, Bundle bundle)
    {
        var took = new bool[fewest.Length];
        for (var v = fewest.Length - 1; v >= bundle.Size; v--)
            if (fewest[v - bundle.Size] is not None and var before && before + bundle.Count < fewest[v])
            {
                fewest[v] = before + bundle.Count;
                took[v] = true;
            }
        return took;
    }

    private static Bottles Traced(int held, List<Bundle> bundles, List<bool[]> took, IReadOnlyList<BottleSize> sizes)
    {
        var taken = new int[sizes.Count];
        for (var i = bundles.Count - 1; i >= 0; i--)
            if (took[i][held])
            {
                taken[bundles[i].Index] += bundles[i].Count;
                held -= bundles[i].Size;
            }
        return new(taken, taken.Select((n, i) => n * sizes[i].Litres).Sum());
    }

    private readonly record struct Bundle(int Index, int Count, int Size);
}
