using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.Measuring;

public class ReadingTests
{
    private static readonly Instrument Exact = new(0, 0);

    // JCGM 100:2008 (GUM) 4.2.2, 4.2.3: s of 1, 2, 3 is 1 and the deviation of their mean 1/√3
    [Fact]
    public void The_scatter_counts_from_three_repeats_on()
    {
        Assert.Equal(1 / Math.Sqrt(3), Reading.OfValues([1, 2, 3], Exact).StandardUncertainty, 1e-12);
        Assert.Equal(0, Reading.OfValues([1, 2], Exact).StandardUncertainty);
        Assert.Equal(Math.Sqrt(0.5), Reading.OfValues([1, 2], Exact).Repeatability!.Value, 1e-12);
        Assert.Null(Reading.OfValues([1], Exact).Repeatability);
    }

    [Fact]
    public void The_expanded_uncertainty_is_two_standard_ones()
    {
        var read = Reading.OfMarks(25, 75, new(1, 0.5));
        Assert.Equal(50, read.Value);
        Assert.Equal(2 * read.StandardUncertainty, read.ExpandedUncertainty);
    }

    [Fact]
    public void No_value_at_all_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => Reading.OfValues([], Exact));

    // A step of 1 °C is a step of 1.8 °F: the 32 of the scale has no part in it
    [Fact]
    public void A_width_on_another_temperature_scale_has_no_offset()
    {
        var reply = CaseFiles.Ask(
            "reading",
            """{"values":["68 °F"],"instrument":{"resolution":"1 °C","permissibleError":"0 °C"}}"""
        );
        Assert.Equal(1.8 / Math.Sqrt(12), (double)reply.Outputs!["standardUncertainty"]!["value"]!, 1e-12);
    }

    // Differences first, squares after: NIST StRD "NumAcc3" and "NumAcc4" are made to show the loss otherwise (digits from memory)
    [Fact]
    public void Small_scatter_of_large_values_is_not_lost() =>
        Assert.Equal(0.1, Reading.OfValues([1e7 + 0.1, 1e7 + 0.2, 1e7 + 0.3], Exact).Repeatability!.Value, 1e-7);
}
