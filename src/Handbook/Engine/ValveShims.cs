using Witnessmark.Handbook.Numerics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Engine;

/// <summary>Which shim goes under which valve: as few bought as can be, then as near the targets as can be.</summary>
/// <remarks>
/// <para><b>Formula.</b> clearance with shim s = old shim + measured clearance − s, which must lie in [min, max]. Every shim taken out
/// and every shim on the shelf serves once; each valve may also buy the best thickness of the series. Over all such choices,
/// in this order: least number bought, least Σ (clearance − target)², least number of valves not on their own shim. One linear
/// assignment with the cost (bought · B + deviation²) · C + changed, B and C larger than all that stands behind them.</para>
/// <para><b>Units.</b> Whole micrometres: readings to the nearest, limits to the inside, a default target to the half.</para>
/// <para><b>Source.</b> The clearance law is common practice, no source; the optimum is derived in docs/handbook/valve-shims.md
/// and checked by enumeration and by an independent solver.</para>
/// <para><b>Valid when</b> the shim acts on the valve one to one (bucket, or shim under bucket; not through a lever), engine cold, and
/// every thickness is measured, not read off the stamp. Measure every clearance again after assembly.</para>
/// </remarks>
public static class ValveShims
{
    /// <summary>More valves than this are a caller's bug: no engine has as many.</summary>
    public const int MostValves = 100;

    /// <summary>More shims on the shelf than this are a caller's bug.</summary>
    public const int MostInStock = 2_000;

    /// <summary>The longest length taken: 100 mm, so that sums of squares stay exact.</summary>
    public static readonly Length Longest = new(100);

    /// <summary>The best plan.</summary>
    /// <param name="valves">1 to <see cref="MostValves"/>, each with a name of its own.</param>
    /// <param name="stock">Thicknesses on the shelf, one for each shim; at most <see cref="MostInStock"/>.</param>
    /// <param name="buyable">What can be bought.</param>
    /// <returns>Refused as <c>noShimFits</c>, naming the valve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Too many valves or shims.</exception>
    public static Answer<ShimPlan> For(IReadOnlyList<Valve> valves, IReadOnlyList<Length> stock, ShimSeries buyable)
    {
        ArgumentOutOfRangeException.ThrowIfZero(valves.Count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(valves.Count, MostValves);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stock.Count, MostInStock);
        var seats = valves.Select(v => new ShimSeat(v)).ToArray();
        var shims = seats.Select(s => s.Shim).Concat(stock.Select(Micrometres.Nearest)).ToArray();
        var bought = seats.Select(s => s.Best(buyable)).ToArray();
        for (var v = 0; v < seats.Length; v++)
            if (bought[v] is null && !shims.Any(seats[v].Takes))
                return NothingFits(valves[v], seats[v]);
        var choice = LinearAssignment.Least(Costs(seats, shims, bought));
        return choice.Without is { } without
            ? Contested(valves[without], seats[without])
            : Plan(valves, seats, shims, bought, choice.ColumnOf);
    }

    private static long[,] Costs(ShimSeat[] seats, int[] shims, int?[] bought)
    {
        var changed = seats.Length + 1L;
        var buying = (1 + seats.Select((s, v) => Worst(s, shims, bought[v])).Sum()) * changed;
        var cost = new long[seats.Length, shims.Length + seats.Length];
        for (var v = 0; v < seats.Length; v++)
        {
            for (var s = 0; s < shims.Length; s++)
                cost[v, s] = seats[v].Takes(shims[s])
                    ? seats[v].FourSquares(shims[s]) * changed + (s == v ? 0 : 1)
                    : LinearAssignment.Forbidden;
            for (var other = 0; other < seats.Length; other++)
                cost[v, shims.Length + other] =
                    other == v && bought[v] is { } size
                        ? buying + seats[v].FourSquares(size) * changed + 1
                        : LinearAssignment.Forbidden;
        }
        return cost;
    }

    // No plan can deviate by more at this valve.
    private static long Worst(ShimSeat seat, int[] shims, int? bought)
    {
        var worst = bought is { } size ? seat.FourSquares(size) : 0;
        foreach (var shim in shims)
            if (seat.Takes(shim))
                worst = Math.Max(worst, seat.FourSquares(shim));
        return worst;
    }

    private static ShimPlan Plan(
        IReadOnlyList<Valve> valves,
        ShimSeat[] seats,
        int[] shims,
        int?[] bought,
        IReadOnlyList<int> columnOf
    )
    {
        var fits = new ShimFit[seats.Length];
        var fourSquares = 0L;
        for (var v = 0; v < seats.Length; v++)
        {
            var column = columnOf[v];
            var shim = column < shims.Length ? shims[column] : bought[v]!.Value;
            fourSquares += seats[v].FourSquares(shim);
            fits[v] = new ShimFit(
                valves[v].Id,
                Micrometres.Of(shim),
                Origin(v, column, seats.Length, shims.Length),
                Micrometres.Of(seats[v].Clearance(shim))
            );
        }
        return new ShimPlan(
            fits.Count(f => f.From == ShimOrigin.Buy),
            new Area(fourSquares / 4.0 * 1e-6),
            fits.Count(f => f.From != ShimOrigin.Own),
            fits
        );
    }

    private static ShimOrigin Origin(int valve, int column, int valves, int shims) =>
        column == valve ? ShimOrigin.Own
        : column < valves ? ShimOrigin.Removed
        : column < shims ? ShimOrigin.Stock
        : ShimOrigin.Buy;

    private static Answer<ShimPlan> NothingFits(Valve valve, ShimSeat seat) =>
        Answer<ShimPlan>.Refuse(
            "noShimFits",
            $"Valve {valve.Id} needs a shim of {seat.Range()}: there is none in the engine, none on the shelf and none to buy."
        );

    private static Answer<ShimPlan> Contested(Valve valve, ShimSeat seat) =>
        Answer<ShimPlan>.Refuse(
            "noShimFits",
            $"Valve {valve.Id} needs a shim of {seat.Range()}: every shim that fits is needed under another valve, and none can be bought."
        );
}
