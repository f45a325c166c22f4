using Witnessmark.Bench.Listening;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Tests.Listening;

/// <summary>A pitch as the reading of a point.</summary>
public sealed class PitchReadingTests
{
    private static readonly PitchGiven Four = new()
    {
        Cylinders = 4,
        Even = true,
        Strokes = 4,
    };

    [Theory]
    [InlineData("belt-tone", PitchUse.Pitch)]
    [InlineData("idle-speed", PitchUse.EngineSpeed)]
    [InlineData("spokes", PitchUse.Compare)]
    public void The_book_says_where_there_is_something_to_hear(string point, PitchUse use) =>
        Assert.Equal(use, PitchUses.Of(AtWork.Bench.Book.Points[point]));

    [Fact]
    public void Elsewhere_there_is_nothing_to_hear() =>
        Assert.All(
            AtWork.Bench.Book.Points.Values.Where(p => p.Id is not ("belt-tone" or "idle-speed" or "spokes")),
            p => Assert.Null(PitchUses.Of(p))
        );

    // docs/handbook/idle-speed.md, worked example by hand: 38.5 Hz and four cylinders make 1155 1/min
    [Fact]
    public void An_exhaust_becomes_a_speed()
    {
        var reading = PitchReading.Of(Heard(38.5, 0.02), PitchUse.EngineSpeed, Four, UnitTable.Named("1/min"))!;
        Assert.Equal(1155, reading.Value.Value, 1e-9);
        // the same share: 1155/38.5 = 30; JCGM 100, 5.1.2; the clock adds (1e-4·38.5)²/3
        Assert.Equal(30 * Math.Sqrt(0.02 * 0.02 + 0.00385 * 0.00385 / 3), reading.Device.Uncertainty.Value, 1e-9);
        Assert.Contains("60 · 38.5 · (4/2) / 4 = 1155 1/min", string.Join('\n', reading.Working));
    }

    // of an uneven firing order the whole cycle is heard: two turns of a four-stroke
    [Fact]
    public void An_uneven_engine_is_heard_by_its_whole_cycle() =>
        Assert.Equal(
            1200,
            PitchReading
                .Of(Heard(10, 0.01), PitchUse.EngineSpeed, Four with { Even = false }, UnitTable.Named("1/min"))!
                .Value.Value,
            1e-9
        );

    // docs/handbook/belt-tension.md, worked example by hand: 4 · 0.12 · 0.35² · 90² = 476.28 N; a share of the pitch counts twice
    [Fact]
    public void A_belt_becomes_a_tension()
    {
        var given = new PitchGiven { FreeSpan = new(350), Mass = new(0.12) };
        var reading = PitchReading.Of(Heard(90, 0.09), PitchUse.Tension, given, UnitTable.Named("N"))!;
        Assert.Equal(476.28, reading.Value.Value, 1e-6);
        Assert.Equal(476.28 * 2 * 0.001, reading.Device.Uncertainty.Value, 0.01);
    }

    [Fact]
    public void Nothing_is_guessed()
    {
        var unit = UnitTable.Named("1/min");
        Assert.Null(PitchReading.Of(Heard(38.5, 0.02), PitchUse.EngineSpeed, new() { Cylinders = 4 }, unit));
        Assert.Null(PitchReading.Of(Heard(38.5, 0.02), PitchUse.Tension, new() { Mass = new(0.1) }, unit));
        Assert.Null(PitchReading.Of(Heard(400, 0.02), PitchUse.Compare, new(), UnitTable.Named("Hz")));
    }

    [Theory]
    [InlineData(88.5166, 0.05, "88.517")]
    [InlineData(88.5166, 0.9, "88.52")]
    public void The_box_gets_one_digit_more_than_is_worth_reading(double hertz, double u, string digits) =>
        Assert.Equal(digits, PitchReading.Of(Heard(hertz, u), PitchUse.Pitch, new(), UnitTable.Named("Hz"))!.Digits);

    // the book: 300 to 4000 1/min; two cylinders of a four-stroke fire once a turn
    [Fact]
    public void The_range_of_an_engine_follows_from_its_cylinders()
    {
        var range = PitchRange.For(
            AtWork.Bench.Book.Points["idle-speed"],
            PitchUse.EngineSpeed,
            Four with
            {
                Cylinders = 2,
            }
        );
        Assert.Equal((5, 4000 / 60.0), (range.Min.Hertz, range.Max.Hertz), new Near());
        Assert.Equal(2, range.Window);
        var single = PitchRange.For(
            AtWork.Bench.Book.Points["idle-speed"],
            PitchUse.EngineSpeed,
            Four with
            {
                Cylinders = 1,
            }
        );
        Assert.Equal(2.8, single.Window, 1e-9); // seven periods of 2.5 Hz
    }

    // Mersenne: equal spokes at 300 and 330 Hz have (300/330)² = 0.826 of the tension
    [Fact]
    public void Spokes_are_compared_by_the_square_of_their_pitch()
    {
        var compared = ComparedPitches.None.With(Heard(330, 1)).With(Heard(300, 1)).With(Heard(320, 1));
        Assert.Equal((2, 1), (compared.Lowest, compared.Highest));
        Assert.Equal(0.8264, compared.LeastShare!.Value, 1e-4);
        Assert.Null(ComparedPitches.None.With(Heard(330, 1)).LeastShare);
    }

    private static Heard Heard(double hertz, double u) => new(new(hertz), 0.98, new(u), null);

    private sealed class Near : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) =>
            Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9;

        public int GetHashCode((double, double) pair) => 0;
    }
}
