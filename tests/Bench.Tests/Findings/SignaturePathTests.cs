using Witnessmark.Bench.Findings;

namespace Witnessmark.Bench.Tests.Findings;

/// <summary>Signatures as path data: what is read, thinned and refused.</summary>
public sealed class SignaturePathTests
{
    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        const string text = "M20 60L60 30L80 70M140 0L300 100";
        var read = SignaturePath.Read(text).Certain;
        Assert.Equal(text, read.Text);
        Assert.Equal([3, 2], read.Strokes.Select(s => s.Count));
    }

    [Theory]
    [InlineData("")]
    [InlineData("20 60L60 30")]
    [InlineData("M20 60")]
    [InlineData("M20 60L")]
    [InlineData("M20 60L60")]
    [InlineData("M20 60L60 30 5")]
    [InlineData("M20 60l60 30")]
    [InlineData("M20 60L301 30")]
    [InlineData("M20 60L60 101")]
    [InlineData("M-1 60L60 30")]
    [InlineData("M1.5 60L60 30")]
    [InlineData("M20 60L60 30Z")]
    [InlineData("M20 60L60 30\"/><script>")]
    [InlineData("M20 60L40 60")] // 20 of 40 units of ink
    [InlineData("M20 60L59 60")]
    public void Anything_else_is_refused(string text) =>
        Assert.StartsWith("The signature cannot be kept: ", SignaturePath.Read(text).Refusal!.Because);

    [Fact]
    public void As_much_ink_as_is_asked_for_is_a_signature() => Assert.True(SignaturePath.Read("M20 60L60 60").Holds);

    [Fact]
    public void A_text_of_more_than_two_kilobytes_is_refused()
    {
        var strokes = string.Concat(Enumerable.Repeat("M100 50L200 60", 146)); // 2044 bytes
        Assert.True(SignaturePath.Read(strokes).Holds);
        Assert.True(SignaturePath.Read(strokes + "L9 9").Holds);
        Assert.False(SignaturePath.Read(strokes + "L90 9").Holds);
    }

    [Fact]
    public void Points_on_a_line_are_left_out_and_corners_stay()
    {
        var drawn = Enumerable
            .Range(0, 101)
            .Select(x => new StrokePoint(x, 10))
            .Concat(Enumerable.Range(11, 60).Select(y => new StrokePoint(100, y)));
        Assert.Equal(
            "M0 10L100 10L100 70",
            SignaturePath
                .Of([
                    [.. drawn],
                ])
                .Certain.Text
        );
    }

    [Fact]
    public void A_long_scribble_is_thinned_until_it_fits_and_stays_near_what_was_drawn()
    {
        var drawn = Scribble(4000);
        var kept = SignaturePath.Of([drawn]).Certain;
        Assert.InRange(kept.Text.Length, 200, SignaturePath.MostBytes);
        Assert.Equal(kept, SignaturePath.Read(kept.Text).Certain);
        // own check of the promise: no drawn point lies farther from the kept strokes than the coarsest tolerance
        Assert.All(drawn, p => Assert.InRange(Off(p, kept.Strokes[0]), 0, 8.001));
    }

    [Fact]
    public void A_tap_is_nothing_signed_and_too_many_strokes_are_refused()
    {
        Assert.Contains("nothing is signed yet", SignaturePath.Of([]).Refusal!.Because);
        Assert.Contains(
            "nothing is signed yet",
            SignaturePath
                .Of([
                    [new(5, 5)],
                ])
                .Refusal!.Because
        );
        Assert.Contains(
            "nothing is signed yet",
            SignaturePath
                .Of([
                    [new(5, 5), new(5, 5)],
                ])
                .Refusal!.Because
        );
        IReadOnlyList<StrokePoint> stroke = [new(100, 50), new(200, 60)];
        Assert.Contains("too many strokes", SignaturePath.Of(Enumerable.Repeat(stroke, 147)).Refusal!.Because);
    }

    private static List<StrokePoint> Scribble(int points) =>
        [
            .. Enumerable
                .Range(0, points)
                .Select(i => new StrokePoint(
                    (int)(150 + 140 * Math.Sin(i * 0.011)),
                    (int)(50 + 45 * Math.Sin(i * 0.037))
                )),
        ];

    private static double Off(StrokePoint p, IReadOnlyList<StrokePoint> stroke) =>
        stroke.Zip(stroke.Skip(1), (a, b) => Off(p, a, b)).Min();

    private static double Off(StrokePoint p, StrokePoint a, StrokePoint b)
    {
        double dx = b.X - a.X,
            dy = b.Y - a.Y;
        var square = dx * dx + dy * dy;
        var t = square == 0 ? 0 : Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / square, 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - t * dx, 2) + Math.Pow(p.Y - a.Y - t * dy, 2));
    }
}
