using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Machines;

public class RegisterColumnsTests
{
    private static readonly string[] Head = ["No", "Frame", "Registration", "Model", "Km", "Seen", "Colour"];

    [Fact]
    public void A_map_names_the_columns()
    {
        var (columns, mistakes) = RegisterColumns.Read(
            "id=No, vin = Frame,name=Model,distance-km=Km,distance-on=Seen,days=dd.MM.yyyy",
            Head
        );
        Assert.Empty(mistakes);
        Assert.Equal((7, "dd.MM.yyyy"), (columns!.Width, columns.Days));
        Assert.Equal(
            ["distance-km 4", "distance-on 5", "id 0", "name 3", "vin 1"],
            columns.Places.Select(p => $"{p.Key} {p.Value}").Order()
        );
        Assert.Equal(["Registration", "Colour"], columns.NotTaken);
    }

    [Fact]
    public void A_file_says_the_same_as_a_map()
    {
        var file = "days = \"dd/MM/yyyy\"\n[columns]\nid = \"No\"\nname = \"Model\"\n";
        var (columns, mistakes) = RegisterColumns.Read(new SourceText("map.toml", file), Head);
        Assert.Empty(mistakes);
        Assert.Equal("dd/MM/yyyy", columns!.Days);
        Assert.Equal((0, 3), (columns.Places["id"], columns.Places["name"]));
    }

    [Fact]
    public void Columns_called_as_the_keys_need_no_map()
    {
        var (columns, _) = RegisterColumns.ByName(["plate", "name", "Vin", "id"]);
        Assert.Equal(["id", "name", "plate"], columns!.Places.Keys.Order());
        Assert.Equal(["Vin"], columns.NotTaken);
        Assert.Equal("yyyy-MM-dd", columns.Days);
    }

    [Theory]
    [InlineData("id=No,nane=Model,name=Model", "unknown key \"nane\"", "\"name\"")]
    [InlineData("id=No,name=Modell", "the list has no column \"Modell\"", "\"Model\"")]
    [InlineData("id=No,name=Model,id=Frame", "\"id\" a second time", "each key once")]
    [InlineData("id=No,name=Model,plate", "\"plate\"", "KEY=COLUMN")]
    [InlineData("id=No,name=Model,=Frame", "\"=Frame\"", "KEY=COLUMN")]
    [InlineData("id=No", "no column says the name of the model", "name=COLUMN")]
    [InlineData("name=Model", "no column tells the machines apart", "id=COLUMN, vin=COLUMN or frame=COLUMN")]
    [InlineData("id=No,name=Model,distance-km=Km", "a distance needs its day", "and distance-on=COLUMN")]
    [InlineData("id=No,name=Model,distance-on=Seen", "a distance needs its day", "and distance-on=COLUMN")]
    [InlineData(
        "id=No,name=Model,distance-km=Km,distance-mi=Colour,distance-on=Seen",
        "distances in km and in mi",
        "one of the two"
    )]
    [InlineData("id=No,name=Model,contact=Colour", "a contact without its owner", "owner=COLUMN beside it")]
    [InlineData("id=No,name=Model,days=yy", "days are written \"yy\"", "dd.MM.yyyy")]
    public void What_is_wrong_with_a_map_is_told(string map, string found, string right)
    {
        var (columns, mistakes) = RegisterColumns.Read(map, Head);
        Assert.Null(columns);
        var mistake = Assert.Single(mistakes);
        Assert.Equal(("--map", found), (mistake.File, mistake.Found));
        Assert.Contains(right, mistake.Right);
    }

    [Fact]
    public void A_column_that_stands_twice_cannot_be_named()
    {
        var (columns, mistakes) = RegisterColumns.Read("id=No,name=Model", ["No", "Model", "Model"]);
        Assert.Null(columns);
        Assert.Equal("the list has 2 columns \"Model\"", Assert.Single(mistakes).Found);
    }

    [Theory]
    [InlineData("[columns]\nid = 1\nname = \"Model\"\n", "2")]
    [InlineData("day = 1\n[columns]\nid = \"No\"\nname = \"Model\"\n", "unknown key \"day\"")]
    [InlineData("columns = [", "TOML")]
    public void A_file_with_a_mistake_is_refused_with_its_place(string file, string says)
    {
        var (columns, mistakes) = RegisterColumns.Read(new SourceText("map.toml", file), Head);
        Assert.Null(columns);
        Assert.Contains(mistakes, m => m.ToString().Contains(says));
    }
}
