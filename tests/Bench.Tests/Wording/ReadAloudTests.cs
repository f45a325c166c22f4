using Witnessmark.Bench.Wording;

namespace Witnessmark.Bench.Tests.Wording;

public class ReadAloudTests
{
    [Theory]
    [InlineData(
        "Chain slack, lower run: 50 ± 1.2 mm. Outside by 18 mm.",
        "Chain slack, lower run: 50 plus or minus 1.2 millimetres. Outside by 18 millimetres."
    )]
    [InlineData("Axle nut: 110 N·m. Inside.", "Axle nut: 110 newton metres. Inside.")]
    [InlineData("Lining: 1 mm.", "Lining: 1 millimetre.")]
    [InlineData("Free play: −0.5 mm.", "Free play: minus 0.5 millimetres.")]
    [InlineData("Level: 40 %. Low.", "Level: 40 percent. Low.")]
    [InlineData("Pads: ≥ 1.5 mm.", "Pads: at least 1.5 millimetres.")]
    [InlineData("Slack: 13 – 32 mm.", "Slack: 13 to 32 millimetres.")]
    public void Units_and_signs_are_said_in_words(string written, string said) =>
        Assert.Equal(said, ReadAloud.Of(written, Tongue.English));

    [Theory]
    [InlineData("Fell 640 in the yard: 2 points left.")]
    [InlineData("Drain plug. Done.")]
    [InlineData("Tyre dates: 2319 and 2402.")]
    [InlineData("Wear: 3 mm²/turn.")]
    public void What_is_no_unit_stays(string sentence) =>
        Assert.Equal(sentence, ReadAloud.Of(sentence, Tongue.English));
}
