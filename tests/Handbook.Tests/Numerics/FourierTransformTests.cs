using System.Numerics;
using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Tests.Numerics;

public class FourierTransformTests
{
    // Oracle: the definition, X_k = Σ x_n·exp(−2πi·k·n/N), added up term by term
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(64)]
    public void It_is_the_sum_that_defines_it_and_comes_back(int length)
    {
        var chance = new Random(length);
        Complex[] given =
        [
            .. Enumerable.Range(0, length).Select(_ => new Complex(chance.NextDouble(), chance.NextDouble())),
        ];
        var found = (Complex[])given.Clone();
        FourierTransform.Forward(found);
        for (var k = 0; k < length; k++)
        {
            var sum = Complex.Zero;
            for (var n = 0; n < length; n++)
                sum += given[n] * Complex.FromPolarCoordinates(1, -Math.Tau * k * n / length);
            Assert.Equal(0, (found[k] - sum).Magnitude, 1e-12 * length);
        }
        FourierTransform.Back(found);
        Assert.All(given.Zip(found), pair => Assert.Equal(0, (pair.First - pair.Second).Magnitude, 1e-13));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(12)]
    public void Any_other_length_is_a_bug_of_the_caller(int length) =>
        Assert.Throws<ArgumentException>("x", () => FourierTransform.Forward(new Complex[length]));

    [Theory]
    [InlineData(1, 1)]
    [InlineData(4, 4)]
    [InlineData(5, 8)]
    public void There_is_room_for_all_samples(int length, int room) =>
        Assert.Equal(room, FourierTransform.Room(length));
}
