using Witnessmark.Bench.Book;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Book;

/// <summary>A small book with one thing wrong in it.</summary>
public class BookMistakeTests
{
    private const string Small = """
        [reach."rear stand"]
        words = "Level floor."
        set = "2 min"
        never-with = ["wheel off"]
        [reach."wheel off"]
        words = "Chocked."
        set = "9 min"
        clear = "9 min"
        clears-after = "1 min"
        [figure-keys]
        "nut.torque" = { unit = "N·m", words = "the nut" }
        "slack" = { unit = "mm", words = "the slack" }
        "dose" = { unit = "L", words = "the dose" }
        [points.slack]
        title = "Slack"
        guards = "safety"
        judged-by = "slack"
        hands = "4 min"
        reach = ["rear stand"]
        again-after = ["nut"]
        only-for = { drive = ["chain", "belt"], kind = "quad", winch = true }
        calculation = "chain-wear"
        figures = ["dose"]
        reading = { kind = "value", unit = "mm", words = "Read it." }
        [points.nut]
        title = "Nut"
        guards = "use"
        judged-by = "nut.torque"
        hands = "3 min"
        consumables = ["rag", { what = "oil", amount = "0.1 L" }, { what = "pin", amount = "2" }, { what = "more oil", figure = "dose" }]
        reading = { kind = "tighten", words = "Pull it." }
        [points.ride]
        title = "Ride"
        guards = "use"
        hands = "9 min"
        after = ["slack"]
        asks-again = ["nut"]
        reading = { kind = "done", words = "Ride it." }
        [purposes.service]
        slack = "It moves."
        nut = "It turns."
        ride = "It rolls."

        """;

    [Fact]
    public void The_small_book_has_no_mistake_and_is_read_as_written()
    {
        var (book, overridden, mistakes) = Read(Small);
        Assert.Empty(mistakes);
        Assert.Empty(overridden);
        Assert.Equal(["ride"], book!.Points["nut"].AgainAfter);
        Assert.Equal(["nut"], book.Points["slack"].AgainAfter);
        Assert.Equal(["slack"], book.Points["ride"].After);
        Assert.Equal(["dose"], book.Points["slack"].Figures);
        Assert.Equal("chain-wear", book.Points["slack"].Calculation);
        Assert.Equal("drive chain or belt, kind quad, winch", book.Points["slack"].OnlyFor.InWords);
        Assert.Equal("", book.Points["nut"].OnlyFor.InWords);
        Assert.Equal(
            [new("rag"), new("oil", "0.1 L"), new("pin", "2"), new("more oil", null, "dose")],
            book.Points["nut"].Consumables
        );
        var off = book.Reach["wheel off"];
        Assert.Equal((9.0, 9.0, 1.0), (off.Set.TotalMinutes, off.Clear.TotalMinutes, off.ClearsAfter.TotalMinutes));
        Assert.Equal(["wheel off"], book.Reach["rear stand"].Never);
        Assert.Equal(("mm", "the slack"), (book.FigureKeys["slack"].Unit.Symbol, book.FigureKeys["slack"].Words));
    }

    [Theory]
    [InlineData("again-after = [\"nut\"]", "again-after = [\"nutt\"]", "\"nutt\"", "no point \"nutt\"", "\"nut\"")]
    [InlineData("\nafter = [\"slack\"]", "\nafter = [\"slak\"]", "\"slak\"", "no point \"slak\"", "\"slack\"")]
    [InlineData("asks-again = [\"nut\"]", "asks-again = [\"nuts\"]", "\"nuts\"", "no point \"nuts\"", "\"nut\"")]
    [InlineData("asks-again = [\"nut\"]", "asks-again = [\"ride\"]", "\"ride\"", "\"ride\" in its own", "other points")]
    [InlineData(
        "again-after = [\"nut\"]",
        "again-after = [\"slack\"]",
        "\"slack\"",
        "\"slack\" in its own",
        "other points"
    )]
    [InlineData(
        "reach = [\"rear stand\"]",
        "reach = [\"rear stnd\"]",
        "\"rear stnd\"",
        "no reach \"rear stnd\"",
        "\"rear stand\""
    )]
    [InlineData(
        "reach = [\"rear stand\"]",
        "reach = [\"wheel off\", \"rear stand\"]",
        "\"rear stand\"]",
        "\"rear stand\" and \"wheel off\" at the same time",
        "true together"
    )]
    [InlineData(
        "never-with = [\"wheel off\"]",
        "never-with = [\"weel off\"]",
        "\"weel off\"",
        "no reach \"weel off\"",
        "\"wheel off\""
    )]
    [InlineData("judged-by = \"slack\"", "judged-by = \"slick\"", "\"slick\"", "no figure key \"slick\"", "\"slack\"")]
    [InlineData(
        "judged-by = \"slack\"",
        "judged-by = \"dose\"",
        "\"dose\"",
        "\"dose\" measures L, the point is read in mm",
        "of that kind"
    )]
    [InlineData("judged-by = \"slack\"\n", "", "slack]", "no figure judges it", "judged-by")]
    [InlineData("figures = [\"dose\"]", "figures = [\"dosis\"]", "\"dosis\"", "no figure key \"dosis\"", "\"dose\"")]
    [InlineData("figure = \"dose\" }]", "figure = \"doze\" }]", "\"doze\"", "no figure key \"doze\"", "\"dose\"")]
    [InlineData("amount = \"2\"", "amount = \"0\"", "\"0\" }", "\"0\"", "a count such as")]
    [InlineData("amount = \"0.1 L\"", "amount = \"1000\"", "\"1000\"", "\"1000\"", "a count such as")]
    [InlineData("amount = \"0.1 L\"", "amount = \"0 L\"", "\"0 L\"", "\"0 L\"", "a count such as")]
    [InlineData("amount = \"0.1 L\"", "amount = \"3 kPa\"", "\"3 kPa\"", "\"3 kPa\"", "a count such as")]
    [InlineData(
        "what = \"pin\"",
        "what = \"oil\"",
        "{ what = \"oil\", amount = \"2\"",
        "\"oil\" a second time",
        "each once"
    )]
    [InlineData("\"rag\", ", "7, ", "7,", "the number 7", "text in quotes")]
    [InlineData("\"rag\", ", "\" \", ", "\" \", {", "the text \" \"", "text in quotes")]
    [InlineData(
        "amount = \"2\" }",
        "amount = \"2\", figure = \"dose\" }",
        "figure = \"dose\" }, { what = \"more",
        "\"figure\" beside",
        "one of the two"
    )]
    [InlineData("kind = \"quad\"", "kind = \"quat\"", "\"quat\"", "the text \"quat\"", "\"quad\"")]
    [InlineData("[\"chain\", \"belt\"]", "[\"chain\", \"bolt\"]", "\"bolt\"", "the text \"bolt\"", "\"belt\"")]
    [InlineData("[\"chain\", \"belt\"]", "[]", "[], kind", "an empty list", "at least one")]
    [InlineData("winch = true", "winsh = true", "winsh", "unknown key \"winsh\"", "\"winch\"")]
    [InlineData("winch = true", "winch = \"yes\"", "\"yes\"", "the text \"yes\"", "true or false")]
    [InlineData(
        "\"chain-wear\"",
        "\"chain-ware\"",
        "\"chain-ware\"",
        "no calculation \"chain-ware\"",
        "\"chain-wear\""
    )]
    [InlineData(
        "\"chain-wear\"",
        "\"palm-reading\"",
        "\"palm-reading\"",
        "no calculation \"palm-reading\"",
        "witnessmark calc list"
    )]
    [InlineData("ride = \"It rolls.\"", "ridge = \"It rolls.\"", "ridge", "no point \"ridge\"", "\"ride\"")]
    [InlineData("set = \"2 min\"", "set = \"8 day\"", "\"8 day\"", "\"8 day\"", "a time from 0 min to 7 day")]
    [InlineData("\nset = \"2 min\"", "", "\"rear stand\"]", "\"set\" is missing", "set =")]
    [InlineData("{ unit = \"mm\", words", "{ unit = \"mn\", words", "\"mn\"", "\"mn\" is not a unit", "one of")]
    [InlineData(
        "\"dose\" = { unit = \"L\", ",
        "\"dose\" = { ",
        "{ words = \"the dose\"",
        "\"unit\" is missing",
        "unit = \"mm\""
    )]
    public void One_mistake_is_told_with_its_place_and_what_would_be_right(
        string old,
        string wrong,
        string at,
        string found,
        string right
    )
    {
        Assert.Equal(2, Small.Split(old).Length);
        var text = Small.Replace(old, wrong);
        var mistake = Assert.Single(Read(text).Mistakes, m => m.Found.Contains(found));
        var from = wrong.Contains(at) ? text.IndexOf(wrong, StringComparison.Ordinal) : 0;
        var before = text[..text.IndexOf(at, from, StringComparison.Ordinal)].Split('\n');
        Assert.Equal((before.Length, before[^1].Length + 1), (mistake.Line, mistake.Column));
        Assert.Contains(right, mistake.Right);
    }

    [Fact]
    public void A_purpose_in_the_wrong_order_is_told_where_the_early_one_stands()
    {
        var swapped = Small
            .Replace("slack = \"It moves.\"\n", "")
            .Replace("ride = \"It rolls.\"\n", "ride = \"It rolls.\"\nslack = \"It moves.\"\n");
        var mistake = Assert.Single(Read(swapped).Mistakes);
        Assert.Equal("\"ride\" before \"slack\", which has to come first", mistake.Found);
        Assert.Equal((Line(swapped, "ride = \"It"), 1), (mistake.Line, mistake.Column));
    }

    [Fact]
    public void A_point_that_another_waits_for_may_be_missing_from_the_plan() =>
        Assert.Empty(Read(Small.Replace("slack = \"It moves.\"\n", "")).Mistakes);

    [Fact]
    public void Two_points_that_wait_for_each_other_are_told_once()
    {
        var ring = Small.Replace("judged-by = \"slack\"", "after = [\"ride\"]\njudged-by = \"slack\"");
        var mistake = Assert.Single(Read(ring).Mistakes, m => m.Found.StartsWith("a ring"));
        Assert.Equal("a ring: slack, ride: each waits for the other", mistake.Found);
        Assert.Equal((Line(ring, "after = [\"ride\"]"), 1), (mistake.Line, mistake.Column));
    }

    // ride asks for the nut again, and now the nut, which is tightened and not only read, for the ride
    [Fact]
    public void Two_points_of_work_that_ask_for_each_other_are_told()
    {
        var ring = Small.Replace("after = [\"slack\"]", "again-after = [\"nut\"]");
        var mistake = Assert.Single(Read(ring).Mistakes);
        Assert.Equal("a ring: nut, ride: each asks for the other again for ever", mistake.Found);
        Assert.Equal(Line(ring, "[points.nut]"), mistake.Line);
    }

    // read, corrected, tightened, read again: in the end nothing is corrected and both stand
    [Fact]
    public void A_point_that_is_only_read_and_its_nut_may_ask_for_each_other() =>
        Assert.Empty(Read(Small.Replace("asks-again = [\"nut\"]", "asks-again = [\"slack\", \"nut\"]")).Mistakes);

    [Fact]
    public void A_longer_ring_is_told_in_its_order()
    {
        const string three = """
            [points.a]
            title = "A"
            guards = "use"
            hands = "1 min"
            after = ["b"]
            reading = { kind = "done", words = "A." }
            [points.b]
            title = "B"
            guards = "use"
            hands = "1 min"
            after = ["c"]
            reading = { kind = "done", words = "B." }
            [points.c]
            title = "C"
            guards = "use"
            hands = "1 min"
            after = ["a"]
            reading = { kind = "done", words = "C." }
            """;
        var mistake = Assert.Single(Read(three).Mistakes);
        Assert.Equal(("a ring: a, b, c: each waits for the other", 5), (mistake.Found, mistake.Line));
    }

    private static BookRead Read(string text) =>
        BookFiles.Read([
            [new SourceText("book/small.toml", text)],
        ]);

    private static int Line(string text, string part) =>
        text.Split('\n').Index().First(l => l.Item.Contains(part)).Index + 1;
}
