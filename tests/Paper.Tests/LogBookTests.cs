using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

public sealed class LogBookTests
{
    private static readonly string Whole = LogBookFile.Write(FullJob.Released, Bench640.Workbench);

    [Fact]
    public void What_was_written_is_intact_and_canonical()
    {
        Assert.Equal(LogBookWord.Intact, LogBookFile.Verify(Whole).Word);
        Assert.Equal(LogBookFile.Head(FullJob.Released, Bench640.Workbench), LogBookFile.Verify(Whole).Head);
        Assert.Equal(Whole, CanonicalJson.Of(JsonDocument.Parse(Whole).RootElement));
    }

    [Fact]
    public void One_changed_digit_of_a_reading_names_the_entry()
    {
        var finding = LogBookFile.Verify(Whole.Replace("\"raw\":[\"31 mm\"]", "\"raw\":[\"30 mm\"]"));
        Assert.Equal((LogBookWord.Changed, "e2"), (finding.Word, finding.Entry));
    }

    /// <summary>Every digit of the file, one after the other: no change of one goes unnoticed.</summary>
    [Fact]
    public void No_digit_of_the_file_can_be_changed_unnoticed()
    {
        for (var i = 0; i < Whole.Length; i++)
            if (char.IsAsciiDigit(Whole[i]))
            {
                var other = $"{Whole[..i]}{(Whole[i] == '9' ? '8' : (char)(Whole[i] + 1))}{Whole[(i + 1)..]}";
                Assert.NotEqual(LogBookWord.Intact, LogBookFile.Verify(other).Word);
            }
    }

    [Fact]
    public void A_result_changed_outside_of_the_entries_is_found()
    {
        var finding = LogBookFile.Verify(Whole.Replace("\"leftAt\":\"25 ± 1.2 mm\"", "\"leftAt\":\"24 ± 1.2 mm\""));
        Assert.Equal((LogBookWord.Changed, null), (finding.Word, finding.Entry));
    }

    [Fact]
    public void A_file_that_breaks_off_is_truncated_wherever_it_breaks()
    {
        for (var end = 40; end < Whole.Length - 1; end += 13)
            Assert.Equal(LogBookWord.Truncated, LogBookFile.Verify(Whole[..end]).Word);
    }

    [Fact]
    public void A_missing_last_entry_is_truncated()
    {
        var short1 = FullJob.Released with { Entries = [.. FullJob.Released.Entries.Take(2)] };
        var text = LogBookFile.Write(short1, Bench640.Workbench).Replace("\"count\":2", "\"count\":3");
        Assert.Equal(LogBookWord.Truncated, LogBookFile.Verify(text).Word);
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"format\":\"witnessmark log book\",\"version\":3}")]
    public void Another_file_is_unreadable(string text) =>
        Assert.Equal(LogBookWord.Unreadable, LogBookFile.Verify(text).Word);

    /// <summary>The example in the documentation is a file that verifies.</summary>
    [Fact]
    public void The_documented_example_is_intact()
    {
        var document = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "files", "log-book.md"));
        var example = document.Split("```json\n")[1].Split("\n```")[0];
        Assert.Equal(LogBookWord.Intact, LogBookFile.Verify(example).Word);
    }
}
