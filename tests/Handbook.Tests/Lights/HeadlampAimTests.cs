using System.Globalization;
using FsCheck.Xunit;
using Witnessmark.Handbook.Lights;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Handbook.Tests.Lights;

/// <summary>Limits from the published rows, each with its mark there; the arithmetic is drop over distance.</summary>
public class HeadlampAimTests
{
    public static TheoryData<string, double, double> Limits =>
        [
            .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "headlamp-inclination.csv"))
                .Where(l => l.Length > 0 && l[0] != '#')
                .Skip(1)
                .Select(l => l.Split(','))
                .Select(c => ($"{c[0]} {c[1]} {c[2]}", Number(c[5]), Number(c[6]))),
        ];

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_beam_on_either_end_of_a_published_limit_is_inside_and_beyond_is_outside(
        string law,
        double min,
        double max
    )
    {
        foreach (var distance in (double[])[3810, 5000, 7500, 10_000])
        {
            Call At(double percent) => Of(distance, 1000, 1000 - distance * percent / 100, min, max).Call;
            Assert.Equal((law, Call.Inside, Call.Inside), (law, At(min), At(max)));
            Assert.Equal((law, Call.Outside, Call.Outside), (law, At(min - 0.001), At(max + 0.001)));
        }
    }

    [Fact]
    public void Every_published_row_says_how_it_was_read()
    {
        var marks = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "headlamp-inclination.csv"))
            .Where(l => l.Length > 0 && l[0] != '#')
            .Skip(1)
            .Select(l => l.Split(',')[^1])
            .ToArray();
        Assert.Equal(7, marks.Length);
        Assert.All(marks, m => Assert.Matches("^(from memory|read|second-hand copy)", m));
    }

    // An instrument leaflet prints 20 to 80 mm for 0.5 to 2 % on a wall at 3.81 m: to the next 10 mm
    [Fact]
    public void The_permitted_band_on_the_wall()
    {
        var aim = Of(3810, 800, 750, 0.5, 2);
        Assert.Equal(20, 10 * Math.Ceiling((800 - aim.CutoffHighest.Millimetres) / 10));
        Assert.Equal(80, 10 * Math.Ceiling((800 - aim.CutoffLowest.Millimetres) / 10));
        Assert.Equal(50, aim.Drop.Millimetres);
    }

    [Property]
    public void A_cutoff_is_inside_where_the_band_on_the_wall_says_so(uint a, uint b, uint c)
    {
        var (distance, lamp, cutoff) = (
            Chance.Between(2000, 10_000, a),
            Chance.Between(500, 1200, b),
            Chance.Between(300, 1200, c)
        );
        var aim = Of(distance, lamp, cutoff, 0.5, 2.5);
        var within = cutoff >= aim.CutoffLowest.Millimetres && cutoff <= aim.CutoffHighest.Millimetres;
        Assert.Equal(within ? Call.Inside : Call.Outside, aim.Call);
        Assert.True(Of(distance, lamp, cutoff + 1, 0.5, 2.5).Inclination < aim.Inclination);
    }

    [Fact]
    public void A_rising_beam_has_a_negative_inclination()
    {
        var aim = Of(10_000, 700, 750, -1, 0);
        Assert.Equal(-0.005, aim.Inclination.Value, 1e-15);
        Assert.Equal(Call.Inside, aim.Call);
    }

    [Fact]
    public void Limits_out_of_order_are_a_bug_of_the_caller_and_one_single_value_is_not()
    {
        Assert.Throws<ArgumentException>(() => Of(10_000, 700, 600, 2, 1));
        Assert.Equal(Call.Inside, Of(10_000, 700, 600, 1, 1).Call);
    }

    private static BeamAim Of(double distance, double lamp, double cutoff, double min, double max) =>
        HeadlampAim.Of(new(distance), new(lamp), new(cutoff), new(min / 100), new(max / 100));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
