using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Toml;

public class TomlFileTests
{
    private static (TomlTable Root, Mistakes Mistakes, bool Torn) Read(string text)
    {
        var mistakes = new Mistakes();
        var file = TomlFile.Read(new("job.toml", text), mistakes);
        return (file.Root, mistakes, file.Torn);
    }

    [Fact]
    public void Every_kind_of_value_is_read_with_its_place()
    {
        var (root, mistakes, _) = Read(
            "name = \"a\"\ncount = 3\nyes = true\nday = 2026-03-31\nlist = [\"x\", \"y\"]\nlength = \"25.4 mm\"\n[t.u]\nk = 'v'\n[[row]]\nn = 1\n[[row]]\nn = 2\n"
        );
        Assert.Equal(("a", 3, true), (root.Text("name"), root.Whole("count", 1, 5), root.Truth("yes")));
        Assert.Equal(new DateOnly(2026, 3, 31), root.DayOrNothing("day"));
        Assert.Equal(["x", "y"], root.Texts("list"));
        Assert.Equal(25.4, root.Quantity("length", Dimension.Length)!.Value.Base);
        Assert.Equal("v", root.Table("t").Table("u").Text("k"));
        Assert.Equal([1, 2], root.TableList("row").Select(r => r.Whole("n", 1, 9)));
        Assert.Equal(new Place("job.toml", 5, 14), root.At("list", "y"));
        root.NoOtherKeys();
        Assert.Empty(mistakes);
    }

    [Theory]
    [InlineData("name = 3", 1, 8, "the number 3")]
    [InlineData("\nname = \" \"", 2, 8, "empty text")]
    [InlineData("other = 1", 1, 1, "\"name\" is missing")]
    public void Text_that_is_none(string text, int line, int column, string found)
    {
        var (root, mistakes, _) = Read(text);
        root.Text("name");
        var mistake = Assert.Single(mistakes);
        Assert.Equal((line, column, found), (mistake.Line, mistake.Column, mistake.Found));
    }

    [Theory]
    [InlineData("n = 0", "the number 0")]
    [InlineData("n = 99999999999999", "the number 99999999999999")]
    [InlineData("n = 1.5", "the number 1.5")]
    [InlineData("n = \"1\"", "the text \"1\"")]
    public void A_whole_number_out_of_bounds_or_of_another_kind(string text, string found)
    {
        var (root, mistakes, _) = Read(text);
        root.Whole("n", 1, 12);
        var mistake = Assert.Single(mistakes);
        Assert.Equal((1, 5, found), (mistake.Line, mistake.Column, mistake.Found));
        Assert.Equal("n = a whole number from 1 to 12", mistake.Right);
    }

    [Theory]
    [InlineData("q = \"5 N·m\"", "\"5 N·m\" has the wrong kind of unit")]
    [InlineData("q = \"5 mn\"", "\"5 mn\": \"mn\" is not a unit")]
    [InlineData("q = \"5\"", "\"5\": the unit is missing")]
    [InlineData("q = \"much\"", "\"much\": it does not begin with a number")]
    [InlineData("q = 5", "the number 5")]
    public void A_quantity_of_another_dimension_or_none(string text, string found)
    {
        var (root, mistakes, _) = Read(text);
        Assert.Null(root.Quantity("q", Dimension.Length));
        Assert.Equal((1, 5, found), Assert.Single(mistakes) is var m ? (m.Line, m.Column, m.Found) : default);
    }

    [Fact]
    public void An_unknown_key_names_the_near_one()
    {
        var (root, mistakes, _) = Read("title = \"a\"\n  titel = \"b\"\n");
        root.Text("title");
        root.NoOtherKeys();
        Assert.Equal(
            "job.toml:2:3: unknown key \"titel\"; right would be \"title\"",
            Assert.Single(mistakes).ToString()
        );
    }

    [Theory]
    [InlineData("a = 1\nb = 2\na = 3", 3, 1)]
    [InlineData("[t]\na = 1\n[u]\n[t]\na = 2", 4, 2)]
    [InlineData("a = 1\n[a]\nb = 2", 2, 2)]
    [InlineData("t = { x = 1 }\n[t.u]\n", 2, 2)]
    [InlineData("t = [1]\n[[t]]\n", 2, 3)]
    [InlineData("t.a = 1\nt.a = 2", 2, 3)]
    public void A_name_given_twice_is_reported_where_it_comes_again(string text, int line, int column)
    {
        var mistake = Assert.Single(Read(text).Mistakes);
        Assert.Equal((line, column), (mistake.Line, mistake.Column));
        Assert.Contains("stands already in line 1", mistake.Right);
    }

    [Theory]
    [InlineData("a = 1\nb = \"no end\nc = 2\n", 2)]
    [InlineData("[t\na = 1\n", 1)]
    [InlineData("a = 1\nwhat is this\n", 2)]
    public void A_torn_file_says_where_and_nothing_of_it_is_taken(string text, int line)
    {
        var (root, mistakes, torn) = Read(text);
        Assert.True(torn);
        Assert.Empty(root.Keys);
        Assert.Equal(line, mistakes[0].Line);
        Assert.StartsWith("TOML: ", mistakes[0].Right);
    }

    [Fact]
    public void Windows_line_ends_and_a_byte_order_mark_change_no_place()
    {
        var (root, mistakes, torn) = Read("\uFEFFa = 1\r\nb = 2\r\n");
        Assert.False(torn, string.Join("\n", mistakes));
        Assert.Equal(new Place("job.toml", 2, 5), root.At("b"));
    }

    [Fact]
    public void All_mistakes_of_a_table_come_in_one_run()
    {
        var (root, mistakes, _) = Read("a = 1\nb = \"x\"\nextra = 1\n");
        root.Text("a");
        root.Truth("b");
        root.Text("c");
        root.NoOtherKeys();
        Assert.Equal([(1, 5), (2, 5), (1, 1), (3, 1)], mistakes.Select(m => (m.Line, m.Column)));
    }
}
