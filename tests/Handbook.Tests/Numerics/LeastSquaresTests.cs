using FsCheck.Xunit;
using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Tests.Numerics;

public class LeastSquaresTests
{
    // NIST Statistical Reference Datasets, linear regression. Correct digits (log relative error) that double precision
    // must reach on each set: estimates, their deviations. Filip and the Wamplers are made to break it. Norris and Pontius lose a
    // digit without the step of refinement.
    [Theory]
    [InlineData("Norris", 13, 12)]
    [InlineData("Pontius", 13, 11)]
    [InlineData("NoInt1", 13, 13)]
    [InlineData("NoInt2", 13, 13)]
    [InlineData("Longley", 11, 11)]
    [InlineData("Wampler2", 11, 0)]
    [InlineData("Wampler3", 8, 9)]
    [InlineData("Wampler4", 7, 9)]
    [InlineData("Wampler5", 5, 9)]
    [InlineData("Filip", 7, 7)]
    public void Certified_values_to_the_stated_digits(string set, double digits, double deviationDigits)
    {
        var nist = new NistLinear(set);
        var fit = LeastSquares.Fit(nist.Design, nist.Y);
        Assert.Equal(nist.Estimates.Length, fit.Coefficients.Length);
        for (var j = 0; j < fit.Coefficients.Length; j++)
        {
            Assert.InRange(Digits(fit.Coefficients[j], nist.Estimates[j]), digits, 16);
            if (nist.Deviations[j] != 0)
                Assert.InRange(Digits(fit.Deviations[j], nist.Deviations[j]), deviationDigits, 16);
        }
        if (nist.ResidualDeviation != 0)
            Assert.InRange(Digits(fit.ResidualDeviation, nist.ResidualDeviation), deviationDigits, 16);
    }

    // Exact polynomials: nothing is left over but rounding, of values up to 4e6
    [Fact]
    public void Wampler1_leaves_no_residual()
    {
        var nist = new NistLinear("Wampler1");
        var fit = LeastSquares.Fit(nist.Design, nist.Y);
        Assert.All(fit.Coefficients, b => Assert.Equal(1, b, 1e-10));
        Assert.InRange(fit.ResidualDeviation, 0, 1e-7);
    }

    [Theory]
    [InlineData("Norris", 36, 2, 0.1)]
    [InlineData("Pontius", 40, 3, 0.11019)]
    [InlineData("NoInt1", 11, 1, 130)]
    [InlineData("NoInt2", 3, 1, 3)]
    [InlineData("Longley", 16, 7, 60323)]
    [InlineData("Filip", 82, 11, 0.8116)]
    [InlineData("Wampler4", 21, 6, 75901)]
    public void The_files_are_read_whole(string set, int rows, int unknowns, double first)
    {
        var nist = new NistLinear(set);
        Assert.Equal((rows, unknowns), (nist.Design.GetLength(0), nist.Design.GetLength(1)));
        Assert.Equal((rows, first), (nist.Y.Length, nist.Y[0]));
    }

    [Fact]
    public void Too_few_readings_and_dependent_columns_are_bugs_of_the_caller()
    {
        Assert.Throws<ArgumentException>(() =>
            LeastSquares.Fit(
                new double[,]
                {
                    { 1, 0 },
                    { 1, 1 },
                },
                [1, 2]
            )
        );
        Assert.Throws<ArgumentException>(() =>
            LeastSquares.Fit(
                new double[,]
                {
                    { 1, 0 },
                    { 1, 0 },
                    { 1, 0 },
                },
                [1, 2, 3]
            )
        );
    }

    [Property(MaxTest = 100)]
    public void The_shortest_solution_of_dependent_columns_leaves_the_residual_of_the_independent_ones(int seed)
    {
        var random = new Random(seed);
        var (x, twice, y) = (new double[12, 2], new double[12, 3], new double[12]);
        for (var i = 0; i < 12; i++)
        {
            (x[i, 0], x[i, 1], y[i]) = (1, random.NextDouble(), random.NextDouble());
            (twice[i, 0], twice[i, 1], twice[i, 2]) = (1, x[i, 1], -2 * x[i, 1]);
        }
        var dependence = new Dependence(twice);
        Assert.Equal(2, dependence.Rank);
        Assert.Equal([false, true, true], Enumerable.Range(0, 3).Select(dependence.Involves));
        var (wanted, found) = (LeastSquares.Fit(x, y), dependence.Shortest(y));
        Assert.Equal(wanted.ResidualSquares, found.ResidualSquares, 1e-10);
        Assert.Equal(wanted.Coefficients[0], found.Coefficients[0], 1e-9);
        Assert.Equal(wanted.DegreesOfFreedom, found.DegreesOfFreedom);
    }

    private static double Digits(double found, double certified) =>
        found == certified ? 15 : -Math.Log10(Math.Abs(found - certified) / Math.Abs(certified));
}
