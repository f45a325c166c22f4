using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Tests.Numerics;

public class LinearAssignmentTests
{
    private const long X = LinearAssignment.Forbidden;

    // github bmc/munkres, test/test_munkres.py (commit ed2a38f); optima enumerated again where there are at most 5 rows
    [Fact]
    public void Munkres_test_suite_3_by_3() =>
        Assert.Equal(
            12,
            Least(
                new long[,]
                {
                    { 5, 9, 1 },
                    { 10, 3, 2 },
                    { 8, 7, 4 },
                }
            )
        );

    [Fact]
    public void Munkres_test_suite_5_by_5() =>
        Assert.Equal(
            51,
            Least(
                new long[,]
                {
                    { 12, 9, 27, 10, 23 },
                    { 7, 13, 13, 30, 19 },
                    { 25, 18, 26, 11, 26 },
                    { 9, 28, 26, 23, 13 },
                    { 16, 16, 24, 6, 9 },
                }
            )
        );

    [Fact]
    public void Munkres_test_suite_5_by_4_turned_on_its_side() =>
        Assert.Equal(
            70,
            Least(
                Turned(
                    new long[,]
                    {
                        { 34, 26, 17, 12 },
                        { 43, 43, 36, 10 },
                        { 97, 47, 66, 34 },
                        { 52, 42, 19, 36 },
                        { 15, 93, 55, 80 },
                    }
                )
            )
        );

    [Fact]
    public void Munkres_test_suite_with_forbidden_pairs() =>
        Assert.Equal(
            19,
            Least(
                new long[,]
                {
                    { 5, 9, X },
                    { 10, X, 2 },
                    { 8, X, 4 },
                }
            )
        );

    [Fact]
    public void Munkres_test_suite_greatest_profit() =>
        Assert.Equal(
            392,
            -Least(
                Negative(
                    new long[,]
                    {
                        { 94, 66, 100, 18, 48 },
                        { 51, 63, 97, 79, 11 },
                        { 37, 53, 57, 78, 28 },
                        { 59, 43, 97, 88, 48 },
                        { 52, 19, 89, 60, 60 },
                    }
                )
            )
        );

    [Fact]
    public void Munkres_test_suite_without_any_choice_names_the_row_left_over() =>
        Assert.Equal(
            2,
            LinearAssignment
                .Least(
                    new[,]
                    {
                        { 5, 9, X },
                        { 10, X, 2 },
                        { X, X, X },
                    }
                )
                .Without
        );

    // github scipy/scipy, scipy/sparse/csgraph/tests/test_matching.py (commit 027960e)
    [Fact]
    public void Scipy_test_suite_400_150() =>
        Assert.Equal(
            850,
            Least(
                new long[,]
                {
                    { 400, 150, 400 },
                    { 400, 450, 600 },
                    { 300, 225, 300 },
                }
            )
        );

    [Fact]
    public void Scipy_test_suite_400_150_with_a_column_more() =>
        Assert.Equal(
            452,
            Least(
                new long[,]
                {
                    { 400, 150, 400, 1 },
                    { 400, 450, 600, 2 },
                    { 300, 225, 300, 3 },
                }
            )
        );

    [Fact]
    public void Scipy_test_suite_10_10_8() =>
        Assert.Equal(
            18,
            Least(
                new long[,]
                {
                    { 10, 10, 8 },
                    { 9, 8, 1 },
                    { 9, 7, 4 },
                }
            )
        );

    [Fact]
    public void Scipy_test_suite_10_10_8_with_a_column_more() =>
        Assert.Equal(
            15,
            Least(
                new long[,]
                {
                    { 10, 10, 8, 11 },
                    { 9, 8, 1, 1 },
                    { 9, 7, 4, 10 },
                }
            )
        );

    // scipy documentation, linear_sum_assignment (matrix from memory)
    [Fact]
    public void Scipy_documentation() =>
        Assert.Equal(
            5,
            Least(
                new long[,]
                {
                    { 4, 1, 3 },
                    { 2, 0, 5 },
                    { 3, 2, 2 },
                }
            )
        );

    // OR-Tools documentation, assignment sample (265 from memory, enumerated again)
    [Fact]
    public void Or_tools_documentation() =>
        Assert.Equal(
            265,
            Least(
                Turned(
                    new long[,]
                    {
                        { 90, 80, 75, 70 },
                        { 35, 85, 55, 65 },
                        { 125, 95, 90, 95 },
                        { 45, 110, 95, 115 },
                        { 50, 100, 90, 100 },
                    }
                )
            )
        );

    // Project Euler, problem 345, the 5 by 5 example
    [Fact]
    public void Project_euler_345() =>
        Assert.Equal(
            3315,
            -Least(
                Negative(
                    new long[,]
                    {
                        { 7, 53, 183, 439, 863 },
                        { 497, 383, 563, 79, 973 },
                        { 287, 63, 343, 169, 583 },
                        { 627, 343, 773, 959, 943 },
                        { 767, 473, 103, 699, 303 },
                    }
                )
            )
        );

    // Own enumeration of every choice
    [Fact]
    public void Random_tables_cost_as_little_as_any_choice()
    {
        var without = 0;
        for (var seed = 0; seed < 500; seed++)
        {
            var cost = Random(seed);
            var found = LinearAssignment.Least(cost);
            var least = Enumerated(cost, 0, 0);
            Assert.Equal(least is null, found.Without is not null);
            without += least is null ? 1 : 0;
            if (least is null)
                continue;
            Assert.Equal(least, found.Cost);
            Assert.Equal(found.ColumnOf.Count, found.ColumnOf.Distinct().Count());
            Assert.Equal(found.Cost, found.ColumnOf.Select((column, row) => cost[row, column]).Sum());
        }
        Assert.InRange(without, 50, 450);
    }

    private static long Least(long[,] cost)
    {
        var found = LinearAssignment.Least(cost);
        Assert.Null(found.Without);
        if (cost.GetLength(0) <= 5)
            Assert.Equal(found.Cost, Enumerated(cost, 0, 0));
        return found.Cost;
    }

    private static long[,] Random(int seed)
    {
        var chance = new Random(seed);
        var rows = chance.Next(1, 6);
        var cost = new long[rows, rows + chance.Next(0, 3)];
        for (var r = 0; r < rows; r++)
        for (var c = 0; c < cost.GetLength(1); c++)
            cost[r, c] = chance.Next(2) == 0 ? X : chance.Next(-20, 100);
        return cost;
    }

    private static long? Enumerated(long[,] cost, int row, int taken)
    {
        if (row == cost.GetLength(0))
            return 0;
        long? least = null;
        for (var c = 0; c < cost.GetLength(1); c++)
            if (
                (taken >> c & 1) == 0
                && cost[row, c] != X
                && Enumerated(cost, row + 1, taken | 1 << c) + cost[row, c] is { } sum
                && !(sum >= least)
            )
                least = sum;
        return least;
    }

    private static long[,] Turned(long[,] table)
    {
        var turned = new long[table.GetLength(1), table.GetLength(0)];
        for (var r = 0; r < table.GetLength(0); r++)
        for (var c = 0; c < table.GetLength(1); c++)
            turned[c, r] = table[r, c];
        return turned;
    }

    private static long[,] Negative(long[,] table)
    {
        for (var r = 0; r < table.GetLength(0); r++)
        for (var c = 0; c < table.GetLength(1); c++)
            table[r, c] = -table[r, c];
        return table;
    }
}
