using System.Text;
using Witnessmark.Machines;

namespace Witnessmark.Tests.Machines;

public class CsvListTests
{
    // RFC 4180, section 2, rules 5 to 7: its own examples
    [Fact]
    public void Quoted_fields_hold_separators_line_ends_and_doubled_quotes()
    {
        using var list = new CsvList(
            new StringReader("a,b,c\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,\"b\"\"bb\",\"x,y\"\r\n")
        );
        Assert.Equal(["a", "b", "c"], list.Head);
        var rows = list.Rows().ToArray();
        Assert.Equal(["aaa", "b\r\nbb", "ccc"], rows[0].Fields);
        Assert.Equal(["zzz", "b\"bb", "x,y"], rows[1].Fields);
        Assert.Equal([2, 4], rows.Select(r => r.Line));
        Assert.Equal("zzz,\"b\"\"bb\",\"x,y\"", rows[1].Raw);
    }

    [Theory]
    [InlineData("a;b\n1,5;2\n")]
    [InlineData("a\tb\n1,5\t2\n")]
    [InlineData("\uFEFFa;b\n\n1,5;2")]
    public void The_separator_is_found(string text)
    {
        using var list = new CsvList(CsvList.Text(new MemoryStream(Encoding.UTF8.GetBytes(text))));
        Assert.Equal(["a", "b"], list.Head);
        Assert.Equal(["1,5", "2"], Assert.Single(list.Rows()).Fields);
    }

    [Fact]
    public void Empty_lines_are_passed_over_and_counted()
    {
        using var list = new CsvList(new StringReader("a,b\n\n1,2\n\n\n3,4\n"));
        Assert.Equal([3, 6], list.Rows().Select(r => r.Line));
    }

    [Fact]
    public void A_torn_row_is_said_to_be_torn_and_the_next_is_read()
    {
        using var list = new CsvList(new StringReader("a,b\n1\"x,2\n3,4\n"));
        Assert.Equal([true, false], list.Rows().Select(r => r.Torn));
    }

    [Theory]
    [InlineData("", "the list is empty")]
    [InlineData("a\"x,b\n1,2\n", "quote in the wrong place")]
    public void A_list_without_a_head_is_none(string text, string says) =>
        Assert.Contains(says, Assert.Throws<InvalidDataException>(() => new CsvList(new StringReader(text))).Message);

    [Fact]
    public void A_field_without_an_end_stops_the_import()
    {
        using var list = new CsvList(new StringReader("a,b\n1,\"" + new string('x', 20_000)));
        Assert.Contains("quote not closed", Assert.Throws<InvalidDataException>(() => list.Rows().Count()).Message);
    }

    // bounded fuzz: 4000 lists of signs that mean something in CSV
    [Fact]
    public void Any_text_is_read_to_its_end_or_refused()
    {
        const string signs = "a1,;\t\"\n\r é|\0";
        var chance = new Random(4180);
        for (var i = 0; i < 4000; i++)
        {
            var text = string.Concat(
                Enumerable.Range(0, chance.Next(60)).Select(_ => signs[chance.Next(signs.Length)])
            );
            try
            {
                using var list = new CsvList(new StringReader(text));
                var last = 1L;
                foreach (var row in list.Rows())
                {
                    Assert.True(row.Torn || row.Fields.Count > 0, text);
                    Assert.InRange(row.Line, last, text.Length + 1);
                    last = row.Line;
                }
            }
            catch (InvalidDataException) { }
        }
    }
}
