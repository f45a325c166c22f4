namespace Witnessmark.Handbook.Numerics;

/// <summary>Gives every row a column of its own at the least total cost.</summary>
/// <remarks>
/// <para><b>Formula.</b> Minimise Σ cost[row, column(row)] over all injective choices of columns. Rows are added one by one along a
/// shortest augmenting path in reduced costs (cost − u(row) − v(column) ≥ 0), which keeps the choice optimal after each row:
/// O(rows² · columns).</para>
/// <para><b>Units.</b> Whole numbers of the caller's own; sums are exact.</para>
/// <para><b>Source.</b> Kuhn, The Hungarian method for the assignment problem, Naval Research Logistics Quarterly 2 (1955);
/// shortest augmenting paths after Jonker and Volgenant, Computing 38 (1987); published instances in the tests.</para>
/// <para><b>Valid when</b> the sum of the largest costs of all rows stays below 2⁶².</para>
/// </remarks>
public static class LinearAssignment
{
    /// <summary>The cost of a pair that must not be made.</summary>
    public const long Forbidden = long.MaxValue;

    /// <summary>The cheapest choice of columns.</summary>
    /// <param name="cost">One row for each thing that needs a column; any sign; <see cref="Forbidden"/> where there is no pair.</param>
    /// <returns>The choice, or the first row that no rearrangement of the rows before it leaves a column for.</returns>
    public static Assignment Least(long[,] cost)
    {
        var search = new ShortestPaths(cost);
        for (var row = 0; row < cost.GetLength(0); row++)
            if (!search.Add(row))
                return new Assignment([], 0, row);
        var columns = search.Columns();
        return new Assignment(columns, columns.Select((column, row) => cost[row, column]).Sum(), null);
    }

    private sealed class ShortestPaths(long[,] cost)
    {
        private const int None = -1;
        private readonly int width = cost.GetLength(1);
        private readonly long[] rowPrice = new long[cost.GetLength(0)];
        private readonly long[] columnPrice = new long[cost.GetLength(1)];
        private readonly int[] rowOf = Enumerable.Repeat(None, cost.GetLength(1)).ToArray();
        private readonly long[] distance = new long[cost.GetLength(1)];
        private readonly int[] cameFrom = new int[cost.GetLength(1)];
        private readonly bool[] settled = new bool[cost.GetLength(1)];

        public int[] Columns()
        {
            var columns = new int[rowPrice.Length];
            for (var column = 0; column < width; column++)
                if (rowOf[column] != None)
                    columns[rowOf[column]] = column;
            return columns;
        }

        public bool Add(int row)
        {
            Array.Fill(distance, Forbidden);
            Array.Fill(settled, false);
            var reached = 0L;
            var from = None;
            for (var at = row; ; )
            {
                Relax(at, from, reached);
                var nearest = Nearest();
                if (nearest == None)
                    return false;
                reached = distance[nearest];
                settled[nearest] = true;
                if (rowOf[nearest] == None)
                {
                    Reprice(row, reached);
                    Augment(row, nearest);
                    return true;
                }
                from = nearest;
                at = rowOf[nearest];
            }
        }

        private void Relax(int row, int from, long reached)
        {
            for (var column = 0; column < width; column++)
            {
                if (settled[column] || cost[row, column] == Forbidden)
                    continue;
                var through = reached + cost[row, column] - rowPrice[row] - columnPrice[column];
                if (through >= distance[column])
                    continue;
                distance[column] = through;
                cameFrom[column] = from;
            }
        }

        private int Nearest()
        {
            var nearest = None;
            for (var column = 0; column < width; column++)
                if (
                    !settled[column]
                    && distance[column] != Forbidden
                    && (nearest == None || distance[column] < distance[nearest])
                )
                    nearest = column;
            return nearest;
        }

        private void Reprice(int row, long shortest)
        {
            rowPrice[row] += shortest;
            for (var column = 0; column < width; column++)
            {
                if (!settled[column])
                    continue;
                columnPrice[column] -= shortest - distance[column];
                if (rowOf[column] != None)
                    rowPrice[rowOf[column]] += shortest - distance[column];
            }
        }

        private void Augment(int row, int column)
        {
            for (; cameFrom[column] != None; column = cameFrom[column])
                rowOf[column] = rowOf[cameFrom[column]];
            rowOf[column] = row;
        }
    }
}

/// <summary>A choice of columns.</summary>
/// <param name="ColumnOf">For each row its column; empty when there is none.</param>
/// <param name="Cost">The total.</param>
/// <param name="Without">The row that is left without a column, or null when every row has one.</param>
public sealed record Assignment(IReadOnlyList<int> ColumnOf, long Cost, int? Without);
