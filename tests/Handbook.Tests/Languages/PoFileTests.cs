using Witnessmark.Handbook.Languages;

namespace Witnessmark.Handbook.Tests.Languages;

/// <summary>The gettext PO format, as its manual describes it.</summary>
public class PoFileTests
{
    [Fact]
    public void Reads_contexts_plurals_escapes_and_texts_over_several_lines()
    {
        var entries = PoFile.Read(
            """
            # a comment
            msgid ""
            msgstr "Language: de\n"

            #: Somewhere.cs
            msgctxt "side"
            msgid "left"
            msgstr "links"

            msgid "a \"word\"\n"
            "and {0} more"
            msgstr ""
            "ein „Wort“\n"
            "und {0} mehr"

            msgid "1 entry"
            msgid_plural "{0} entries"
            msgstr[0] "1 Eintrag"
            msgstr[1] "{0} Einträge"
            """
        );
        Assert.Equal(3, entries.Count);
        Assert.Equal(("side", "left", "links"), (entries[0].Context, entries[0].Key, entries[0].Texts[0]));
        Assert.Equal("a \"word\"\nand {0} more", entries[1].Key);
        Assert.Equal("ein „Wort“\nund {0} mehr", entries[1].Texts[0]);
        Assert.Equal("{0} entries", entries[2].Many);
        Assert.Equal(["1 Eintrag", "{0} Einträge"], entries[2].Texts);
        Assert.Equal(6, entries[0].Line);
    }

    [Theory]
    [InlineData("msgid left", "Line 1")]
    [InlineData("msgid \"a\"\nmsgstr left", "Line 2")]
    [InlineData("words \"b\"", "Line 1")]
    public void Says_the_line_that_is_none_of_the_format(string text, string where)
    {
        Assert.Contains(where, Assert.Throws<FormatException>(() => PoFile.Read(text)).Message);
    }

    [Fact]
    public void An_entry_without_a_text_is_as_good_as_none()
    {
        var tongue = Tongue.German(new(PoFile.Read("msgid \"left\"\nmsgstr \"\"")));
        Assert.Equal("left", Sentence.Of("left").In(tongue));
    }
}
