using System.Text;
using System.Text.Json;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>What may stand at a key: how it is described, what is read, what is not. The bounds are the contract's own.</summary>
public class TakeTests
{
    [Fact]
    public void A_quantity_is_described_with_all_its_units()
    {
        Assert.StartsWith(
            "text with a unit, e.g. \"1 mm\" (mm, ",
            Take.Quantity<Length>("slack", "").Kind,
            StringComparison.Ordinal
        );
        Assert.Equal(
            "text with a unit, e.g. \"1 Hz\" (Hz, 1/min), zero or more",
            Take.Quantity<Frequency>("f", "").Kind
        );
        Assert.StartsWith(
            "text with a unit, e.g. \"1 %\"",
            Take.Quantity<Ratio>("share", "").Kind,
            StringComparison.Ordinal
        );
        Assert.Equal("text with a unit, e.g. \"1 1/K\", zero or more", Take.Quantity<Expansion>("beta", "").Kind);
    }

    [Theory]
    [InlineData("-273.15 °C", true)]
    [InlineData("-273.16 °C", false)]
    [InlineData("-40 °F", true)]
    public void A_temperature_is_above_absolute_zero(string written, bool taken) =>
        Assert.Equal(taken, Taken(Take.Quantity<Temperature>("t", ""), $"\"{written}\""));

    [Theory]
    [InlineData("0 mm", true, false, true)]
    [InlineData("1 mm", true, true, true)]
    [InlineData("-1 mm", false, false, true)]
    [InlineData("1 kg", false, false, false)]
    public void Lengths_are_zero_or_more_or_above_zero_or_of_either_sign(
        string written,
        bool zero,
        bool above,
        bool any
    )
    {
        var json = $"\"{written}\"";
        Assert.Equal(zero, Taken(Take.Quantity<Length>("a", ""), json));
        Assert.Equal(above, Taken(Take.Positive<Length>("a", ""), json));
        Assert.Equal(any, Taken(Take.Signed<Length>("a", ""), json));
    }

    [Theory]
    [InlineData(1.0, 2.0, "number from 1 to 2")]
    [InlineData(1.0, double.PositiveInfinity, "number, 1 or more")]
    [InlineData(double.NegativeInfinity, 2.0, "number, 2 or less")]
    [InlineData(double.NegativeInfinity, double.PositiveInfinity, "number")]
    public void A_number_is_described_with_the_bounds_that_it_has(double min, double max, string kind)
    {
        var input = Take.Number("n", "", min, max);
        Assert.Equal(kind, input.Kind);
        Assert.Equal(double.IsNegativeInfinity(min), Taken(input, "0.999"));
        Assert.Equal(double.IsPositiveInfinity(max), Taken(input, "2.001"));
        Assert.True(Taken(input, "1") && Taken(input, "2"));
    }

    [Fact]
    public void Minus_zero_is_zero() => Assert.False(double.IsNegative(Read(Take.Number("n", ""), "-0.0")));

    [Fact]
    public void A_count_has_no_fraction_and_says_its_most_where_there_is_one()
    {
        Assert.Equal("whole number, 2 or more, at most 8", Take.Count("n", "", 2, 8).Kind);
        Assert.Equal("whole number, 2 or more", Take.Count("n", "", 2).Kind);
        Assert.Equal(
            [false, true, true, false, false],
            new[] { "1", "2", "8", "9", "2.5" }.Select(n => Taken(Take.Count("n", "", 2, 8), n))
        );
    }

    [Fact]
    public void What_may_be_left_out_says_so_and_what_then_holds()
    {
        var slack = Take.Quantity<Length>("slack", "");
        Assert.False(slack.Optional);
        Assert.True(slack.OrNothing().Optional);
        var or = slack.Or(new(3), "3 mm");
        Assert.Equal((true, "3 mm"), (or.Optional, or.Default));
        var left = new Given(Json("{}"), "", [or]);
        Assert.Equal(3, left.Of(or).Millimetres);
        var nothing = slack.OrNothing();
        Assert.Null(new Given(Json("{}"), "", [nothing]).Maybe(nothing));
        Assert.Throws<InvalidOperationException>(() => new Given(Json("{}"), "", [nothing]).Of(nothing));
    }

    [Fact]
    public void A_long_value_is_told_by_its_beginning()
    {
        var input = Take.Words("name", "");
        string Told(int length) =>
            Assert.Throws<MalformedGiven>(() => Read(input, $"[{new string('1', length - 2)}]")).Message;
        Assert.DoesNotContain("…", Told(40), StringComparison.Ordinal);
        Assert.Contains(new string('1', 39) + "…", Told(41), StringComparison.Ordinal);
    }

    // RFC 8259, section 8.2: an escape may name half of a surrogate pair, which is no character
    [Theory]
    [InlineData("""{"a":[1,true,null,"whole","\ud83d\ude00"],"b":{"c":"d"}}""", false)]
    [InlineData("\"\\ud83d\"", true)]
    [InlineData("""["whole","\ud83d"]""", true)]
    [InlineData("""{"a":"whole","b":{"c":[0,{"d":"\udead"}]}}""", true)]
    [InlineData("""{"\ud83d":1}""", true)]
    [InlineData("""{"":1}""", false)]
    [InlineData("{}", false)]
    [InlineData("[]", false)]
    [InlineData("12", false)]
    public void Half_a_character_is_found_at_whatever_depth(string json, bool broken) =>
        Assert.Equal(broken, BrokenText.In(Json(json)));

    private static bool Taken<T>(Input<T> input, string json)
    {
        try
        {
            input.Read(Json(json), input.Name);
            return true;
        }
        catch (MalformedGiven)
        {
            return false;
        }
    }

    private static T Read<T>(Input<T> input, string json) => input.Read(Json(json), input.Name);

    private static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(Encoding.UTF8.GetBytes(text));
        return document.RootElement.Clone();
    }
}
