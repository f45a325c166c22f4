using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Tests.Numerics;

public class DependenceTests
{
    // Orthogonal columns: their lengths are the singular values. Only the ratio counts, whatever the unit of the columns is.
    [Theory]
    [InlineData(1, 1e-6, 2)]
    [InlineData(1e-6, 1e-6, 2)]
    [InlineData(1e6, 1e-6, 2)]
    [InlineData(1e-6, 1e-10, 1)]
    [InlineData(1e6, 1e-10, 1)]
    [InlineData(1, 1e-8, 1)] // not above 10⁻⁸ of the largest
    [InlineData(1, 1.0001e-8, 2)]
    public void A_column_counts_when_it_is_not_too_small_beside_the_largest(double largest, double ratio, int rank)
    {
        var dependence = new Dependence(
            new[,]
            {
                { largest, 0 },
                { 0, largest * ratio },
                { 0, 0 },
            }
        );
        Assert.Equal((rank, rank == 2), (dependence.Rank, dependence.None));
        Assert.Equal([false, rank < 2], Enumerable.Range(0, 2).Select(dependence.Involves));
    }
}
