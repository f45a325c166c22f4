using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilConsumptionTests
{
    private static OilUse Of(double[] added, double start, double end, double kilometres, double deviation) =>
        OilConsumption.Of(
            [.. added.Select(a => new Volume(a))],
            new(start, deviation),
            end,
            new(0.5),
            new(kilometres * 1e6),
            new(0.02)
        );

    private static double Draw(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    // Oracle: readings and portions drawn at random (seeded) round a known consumption of 0.1 L per 1000 km
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    public void Drawn_readings_scatter_as_the_deviation_says(int portions)
    {
        var random = new Random(portions + 7);
        const int draws = 200_000;
        var (sum, squares, proven) = (0.0, 0.0, 0);
        var truth = new double[portions];
        Array.Fill(truth, 0.1);
        var fall = (0.2 - truth.Sum()) / 0.5;
        for (var i = 0; i < draws; i++)
        {
            var use = Of(
                [.. truth.Select(a => a + 0.02 * Draw(random))],
                0.5 + 0.05 * Draw(random),
                0.5 - fall + 0.05 * Draw(random),
                2000,
                0.05
            );
            sum += use.PerThousandKilometres.Litres;
            squares += Math.Pow(use.PerThousandKilometres.Litres - 0.1, 2);
            proven += use.Balance == OilBalance.Used ? 1 : 0;
        }
        var expected = Of(truth, 0.5, 0.5 - fall, 2000, 0.05);
        Assert.Equal(0.1, sum / draws, 0.001);
        Assert.Equal(expected.Deviation.Litres, Math.Sqrt(squares / draws), 0.0005);
        Assert.Equal(0.1, expected.PerThousandKilometres.Litres, 1e-12);
        Assert.True(proven > 0.9 * draws);
    }

    // One-sided 95 %: an engine that uses nothing is called a user in one case of twenty
    [Fact]
    public void An_engine_that_uses_nothing_is_rarely_accused()
    {
        var random = new Random(11);
        const int draws = 200_000;
        int used = 0,
            gained = 0;
        for (var i = 0; i < draws; i++)
            switch (Of([], 0.5 + 0.05 * Draw(random), 0.5 + 0.05 * Draw(random), 1000, 0.05).Balance)
            {
                case OilBalance.Used:
                    used++;
                    break;
                case OilBalance.Gained:
                    gained++;
                    break;
            }
        Assert.Equal(0.05, used / (double)draws, 0.002);
        Assert.Equal(0.05, gained / (double)draws, 0.002);
    }

    [Theory]
    [InlineData(0.5, OilBalance.Unproven)]
    [InlineData(0.499, OilBalance.Used)]
    [InlineData(0.501, OilBalance.Gained)]
    public void Exact_readings_prove_any_difference(double end, OilBalance balance) =>
        Assert.Equal(balance, Of([], 0.5, end, 1000, 0).Balance);

    [Fact]
    public void A_level_that_rose_beyond_the_scatter_is_explained()
    {
        const string given =
            """{"added":[],"levelStart":0.5,"levelEnd":END,"betweenMarks":"0.5 L","distance":"1000 km","levelDeviation":0.05,"addedDeviation":"0 L"}""";
        var risen = CaseFiles.Ask("oil-consumption", given.Replace("END", "0.9"));
        Assert.Contains("fuel or water", (string)risen.Outputs!["note"]!);
        Assert.False((bool)risen.Outputs["real"]!);
        Assert.Null(CaseFiles.Ask("oil-consumption", given.Replace("END", "0.55")).Outputs!["note"]);
        Assert.Null(CaseFiles.Ask("oil-consumption", given.Replace("END", "0.1")).Outputs!["note"]);
    }

    [Fact]
    public void No_distance_and_no_marks_are_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], 0.5, 0.5, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => OilConsumption.Of([], default, 0, new(0), new(1e6), new(0)));
    }
}
