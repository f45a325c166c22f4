using System.Text.Json;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Handbook.Tests.Languages;

/// <summary>A sentence keeps its key and its arguments, and is put into words late.</summary>
public class SentenceTests
{
    private static readonly Tongue German = Tongue.German(
        new(
            PoFile.Read(
                """
                msgid "{0} L added"
                msgstr "{0} L nachgefüllt"

                msgid "{0} of {1}"
                msgstr "von {1} sind es {0}"

                msgid "left"
                msgstr "links"

                msgctxt "leaves"
                msgid "left"
                msgstr "verlassen"

                msgid "1 point"
                msgid_plural "{0} points"
                msgstr[0] "1 Prüfpunkt"
                msgstr[1] "{0} Prüfpunkte"
                """
            )
        )
    );

    [Fact]
    public void English_is_what_an_interpolated_string_says()
    {
        Sentence said = $"{0.35:0.00} L added";
        Assert.Equal("0.35 L added", said.ToString());
        Assert.Equal("{0} L added", said.Key);
    }

    [Fact]
    public void Another_language_has_its_own_order_and_decimal_mark()
    {
        Sentence added = $"{0.35} L added";
        Sentence part = $"{1.5} of {added}";
        Assert.Equal("von 0,35 L nachgefüllt sind es 1,5", part.In(German));
        Assert.Equal("1.5 of 0.35 L added", part.In(Tongue.English));
    }

    [Fact]
    public void A_negative_number_has_a_true_minus_for_readers_and_a_hyphen_where_it_is_written_down()
    {
        Sentence said = $"{-0.91} of {Sentence.Number("-1.5")}";
        Assert.Equal("−0.91 of −1.5", said.In(Tongue.English));
        Assert.Equal("von −1,5 sind es −0,91", said.In(German));
        Assert.Equal("-0.91 of -1.5", said.ToString());
        Assert.Equal("\"-0.91 of -1.5\"", JsonSerializer.Serialize(said));
    }

    [Theory]
    [InlineData("-0.91 ± 0.27 mm", "−0,91 ± 0,27 mm")]
    [InlineData("10W-40", "10W-40")] // a name with a hyphen
    [InlineData("12-14", "12-14")]
    [InlineData("1e-05", "1e-05")]
    [InlineData("no-leak", "no-leak")]
    [InlineData("-", "-")]
    public void Only_the_sign_of_a_number_is_a_minus(string digits, string german)
    {
        Assert.Equal(german, German.Number(digits));
        Assert.Equal(german.Replace(',', '.'), Tongue.English.Number(digits));
    }

    [Theory]
    [InlineData("−0,91", "-0.91")]
    [InlineData("-0.91", "-0.91")]
    public void What_a_person_reads_is_read_back_into_what_is_stored(string read, string stored)
    {
        Assert.Equal(stored, German.Stored(read));
        Assert.Equal(stored, Tongue.English.Stored(read.Replace(',', '.')));
    }

    [Theory]
    [InlineData(1, "1 point", "1 Prüfpunkt")]
    [InlineData(0, "0 points", "0 Prüfpunkte")]
    [InlineData(12, "12 points", "12 Prüfpunkte")]
    public void One_and_many_have_their_own_texts(int count, string english, string german)
    {
        var said = Sentence.Count(count, $"1 point", $"{count} points");
        Assert.Equal(english, said.ToString());
        Assert.Equal(german, said.In(German));
    }

    [Fact]
    public void A_word_with_two_meanings_has_two_texts()
    {
        Sentence side = $"left";
        Assert.Equal("links", side.In(German));
        Assert.Equal("verlassen", ((Sentence)$"left").Meaning("leaves").In(German));
        Assert.Equal("left", ((Sentence)$"left").Meaning("leaves").ToString());
    }

    [Fact]
    public void A_text_of_a_file_is_said_where_the_catalogue_has_it_and_else_stays()
    {
        Assert.Equal("links", Sentence.Of("left").In(German));
        Assert.Equal("Brammer links", Sentence.Of("Brammer links").In(German));
        Assert.Equal("links, oben", Sentence.List(["left", "oben"]).In(German));
    }

    [Theory]
    [InlineData(DayForm.Figures, "2026-11-24", "24.11.2026")]
    [InlineData(DayForm.Words, "24 November 2026", "24. November 2026")]
    [InlineData(DayForm.Month, "November 2026", "November 2026")]
    [InlineData(DayForm.Week, "Tue 24 Nov", "Di 24. Nov.")]
    public void Days_are_written_as_people_write_them_there(DayForm form, string english, string german)
    {
        var day = Sentence.Day(form, new(2026, 11, 24));
        Assert.Equal(english, day.ToString());
        Assert.Equal(german, day.In(German));
    }

    [Fact]
    public void March_is_not_cut_short_in_German()
    {
        Assert.Equal("Mi 4. März", Sentence.Day(DayForm.Week, new(2026, 3, 4)).In(German));
        Assert.Equal("März 2026", Sentence.Day(DayForm.Month, new(2026, 3, 4)).In(German));
    }

    [Fact]
    public void Braces_of_a_text_are_no_places()
    {
        Sentence said = $"{{x}} is {1}";
        Assert.Equal("{x} is 1", said.ToString());
        Assert.Equal("{x} is 1", said.In(German));
    }

    [Fact]
    public void In_a_file_it_is_English()
    {
        Sentence said = $"{0.35} L added";
        var json = JsonSerializer.Serialize(said);
        Assert.Equal("\"0.35 L added\"", json);
        Assert.Equal(said, JsonSerializer.Deserialize<Sentence>(json));
    }

    [Fact]
    public void Only_English_begins_small_inside_another_sentence()
    {
        Sentence headline = $"Outside";
        Assert.Equal("outside", headline.Inside().ToString());
        Assert.Equal("Outside", headline.Inside().In(German));
    }
}
