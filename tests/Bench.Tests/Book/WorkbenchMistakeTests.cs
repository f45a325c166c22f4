using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Tests.Book;

public class WorkbenchMistakeTests
{
    private const string Drive = "book/final-drive.toml";
    private const string Sheet = "sheets/fell-640.toml";
    private const string Oil = "book/engine-oil.toml";

    [Theory]
    [InlineData(
        Drive,
        "judged-by = \"chain.spread\"",
        "judged-by = \"chain.spred\"",
        13,
        "there is no figure key \"chain.spred\"",
        "\"chain.spread\""
    )]
    [InlineData(
        Drive,
        "corrected-by = \"axle-alignment\"",
        "corrected-by = \"axle-alinement\"",
        16,
        "no calculation \"axle-alinement\"",
        "\"axle-alignment\""
    )]
    [InlineData(
        Drive,
        "[\"axle-nut\", \"axle-alignment\"]",
        "[\"axle-nut\", \"axle-alinement\"]",
        28,
        "no point \"axle-alinement\"",
        "\"axle-alignment\""
    )]
    [InlineData(
        Drive,
        "instrument = \"calliper\"",
        "instrument = \"caliper\"",
        14,
        "no instrument \"caliper\"",
        "\"calliper\""
    )]
    [InlineData(
        Drive,
        "instrument = \"calliper\"",
        "instrument = \"dipstick\"",
        14,
        "reads 1, the point is read in mm",
        "an instrument for that unit"
    )]
    [InlineData(Drive, "step = \"9 links\"", "stepp = \"9 links\"", 1, "unknown key \"stepp\"", "\"step\"", 2)]
    [InlineData(
        Drive,
        "shift-prior-mean = \"100 mm²\"",
        "shift-prior-mean = \"100 mm\"",
        20,
        "\"100 mm\"",
        "text with a unit, e.g. \"1 mm²\""
    )]
    [InlineData(Drive, "\nkind = \"sides\"", "\nkind = \"side\"", 8, "the text \"side\"", "\"sides\"")]
    [InlineData(
        Drive,
        "plausible = \"1 to 150 mm\"",
        "plausible = \"150 to 1 mm\"",
        13,
        "swapped",
        "the smaller one first"
    )]
    [InlineData(Oil, "filter-replaced = \"true\"", "filter-replaced = \"yes\"", 19, "\"yes\"", "\"true\" or \"false\"")]
    [InlineData(
        "book/purposes.toml",
        "\ntyre-dates = \"Rubber ages though the tread is deep; the next",
        "\ntyre-date = \"Rubber ages though the tread is deep; the next",
        1,
        "no point \"tyre-date\"",
        "\"tyre-dates\""
    )]
    [InlineData(
        "shop.toml",
        "vin = \"GZ0FE64C8RH000412\"",
        "vin = \"GZ0FE64C8RHOOO412\"",
        7,
        "17 signs",
        "without I, O and Q"
    )]
    [InlineData(
        "shop.toml",
        "vin = \"GZ0FE64C8RH000412\"",
        "vin = \"GZ0FE64C8RH0004\"",
        7,
        "15 signs",
        "without I, O and Q"
    )]
    [InlineData("shop.toml", "year = 2024", "year = 24", 8, "the number 24", "from 1885 to 2100")]
    [InlineData("shop.toml", "from = \"5 N·m\"", "from = \"500 N·m\"", 8, "swapped", "from the smaller one")]
    [InlineData(
        "shop.toml",
        "last-distance-on = 2026-04-22",
        "last-distance-on = \"April\"",
        20,
        "the text \"April\"",
        "a day such as 2026-03-31"
    )]
    public void One_mistake_is_told_with_its_place_and_what_would_be_right(
        string file,
        string old,
        string replacement,
        int column,
        string found,
        string right,
        int mistakesInAll = 1
    )
    {
        var mistakes = DemoFiles.MistakesWith(file, old, replacement);
        Assert.Equal(mistakesInAll, mistakes.Count);
        var mistake = Assert.Single(mistakes, m => m.Found.Contains(found));
        Assert.Equal(
            (file, DemoFiles.LineOf(file, old.Trim('\n')), column),
            (mistake.File, mistake.Line, mistake.Column)
        );
        Assert.Contains(right, mistake.Right);
    }

    [Fact]
    public void A_sheet_without_a_figure_that_a_point_needs_is_no_mistake_and_names_point_figure_and_sheet()
    {
        const string table =
            "[figures.\"throttle.free-play\"]\nrange = \"2 to 4 mm\"\nwhen = \"at the flange of the grip, bars straight ahead\"\norigin = \"maker: handbook p. 58\"\n";
        var other = DemoFiles.All.Append(
            new("sheets/fell-900.toml", DemoFiles.All.Single(s => s.Name == Sheet).Text.Replace(table, ""))
        );
        var (bench, mistakes) = WorkbenchFiles.Read(other);
        Assert.Empty(mistakes);
        Assert.Equal(
            "The figure sheet \"fell-900\" has no figure \"throttle.free-play\", by which \"Throttle grip, free play\" is judged: a job will ask for it at the bench.",
            Assert.Single(SheetGaps.Of(bench!)).ToString()
        );
    }

    [Fact]
    public void A_machine_without_a_chain_needs_no_chain_figures()
    {
        const string table =
            "[figures.\"axle.difference\"]\nmax = \"0.5 mm\"\nwhen = \"left against right, both read the same way\"\norigin = \"common practice\"\n";
        const string shaftFigure = "[figures.\"final-drive.drain-plug\"]\ntorque = \"20 N·m\"\norigin = \"shop\"\n";
        var text = DemoFiles.All.Single(s => s.Name == Sheet).Text;
        Assert.Contains(table, text);
        var shaft = text.Replace(table, shaftFigure).Replace("drive = \"chain\"", "drive = \"shaft\"");
        Assert.Empty(WorkbenchFiles.Read(DemoFiles.All.Append(new("sheets/fell-900.toml", shaft))).Mistakes);
    }

    [Fact]
    public void A_safety_point_that_is_measured_needs_a_figure()
    {
        var mistake = Assert.Single(
            DemoFiles.MistakesWith("book/controls.toml", "judged-by = \"throttle.free-play\"\n", "")
        );
        Assert.Equal((1, 2 + "points.".Length), (mistake.Line, mistake.Column));
        Assert.Contains("no figure judges it", mistake.Found);
    }

    [Fact]
    public void A_machine_whose_sheet_is_not_there()
    {
        const string old = "year = 2023\nsheet = \"fell-640\"";
        var mistake = Assert.Single(DemoFiles.MistakesWith("shop.toml", old, "year = 2023\nsheet = \"fell-64\""));
        Assert.Equal((DemoFiles.LineOf("shop.toml", "year = 2023") + 1, 9), (mistake.Line, mistake.Column));
        Assert.Equal("\"fell-640\"", mistake.Right);
    }

    [Fact]
    public void Two_machines_with_one_number()
    {
        var mistake = Assert.Single(DemoFiles.MistakesWith("shop.toml", "GZ0FE64C5PH000977", "GZ0FE64C8RH000412"));
        Assert.Equal("the number of \"fell-640-0412\" too", mistake.Found);
    }

    [Fact]
    public void A_point_in_two_files_is_reported_in_the_second()
    {
        var more = DemoFiles.All.Append(
            new(
                "book/zz.toml",
                "[points.leaks]\ntitle = \"x\"\nguards = \"use\"\nhands = \"1 min\"\nreading = { kind = \"done\", words = \"x\" }\n"
            )
        );
        var mistake = Assert.Single(WorkbenchFiles.Read(more).Mistakes);
        Assert.Equal(("book/zz.toml", 1, 9), (mistake.File, mistake.Line, mistake.Column));
        Assert.Contains("book/engine-oil.toml", mistake.Right);
    }

    [Fact]
    public void Mistakes_of_all_files_come_in_one_run_and_nothing_is_taken()
    {
        var changed = DemoFiles.All.Select(s =>
            s.Name switch
            {
                Sheet => s with { Text = s.Text.Replace("13 to 32 mm", "32 to 13 mm") },
                "shop.toml" => s with { Text = s.Text.Replace("year = 2024", "year = 24") },
                Drive => s with { Text = s.Text.Replace("count = 12", "count = \"12\"") },
                _ => s,
            }
        );
        var (bench, mistakes) = WorkbenchFiles.Read(changed);
        Assert.Null(bench);
        Assert.Equal([Drive, Sheet, "shop.toml"], mistakes.Select(m => m.File));
    }

    [Fact]
    public void A_torn_file_hides_no_mistake_of_the_others_and_invents_none()
    {
        var changed = DemoFiles.All.Select(s =>
            s.Name switch
            {
                Drive => s with { Text = s.Text + "\nhalf a li" },
                "shop.toml" => s with { Text = s.Text.Replace("year = 2024", "year = 24") },
                _ => s,
            }
        );
        Assert.Equal([Drive, "shop.toml"], WorkbenchFiles.Read(changed).Mistakes.Select(m => m.File).Distinct());
    }

    [Fact]
    public void Without_a_shop_file_or_with_two_there_is_no_workbench()
    {
        Assert.Equal(
            "no such file",
            Assert
                .Single(
                    WorkbenchFiles.Read(DemoFiles.All.Where(s => s.Name != "shop.toml")).Mistakes,
                    m => m.File == "shop.toml"
                )
                .Found
        );
        var twice = DemoFiles.All.Append(new("other/shop.toml", DemoFiles.All.Single(s => s.Name == "shop.toml").Text));
        Assert.Equal("a second workshop", Assert.Single(WorkbenchFiles.Read(twice).Mistakes).Found);
    }

    [Fact]
    public void A_file_in_no_known_place_is_told() =>
        Assert.Equal(
            "a file in no known place",
            Assert.Single(WorkbenchFiles.Read(DemoFiles.All.Append(new("notes.toml", ""))).Mistakes).Found
        );

    [Fact]
    public void An_older_revision_stands_beside_the_newest_under_the_same_id()
    {
        var text = DemoFiles.All.Single(s => s.Name == Sheet).Text;
        var older = text.Replace("revision = 4", "revision = 3");
        var (bench, mistakes) = WorkbenchFiles.Read(DemoFiles.All.Append(new("sheets/fell-640.r3.toml", older)));
        Assert.Empty(mistakes);
        Assert.Equal((3, 4), (bench!.Sheet("fell-640", 3)!.Revision, bench.Newest("fell-640")!.Revision));
        var wrong = WorkbenchFiles.Read(DemoFiles.All.Append(new("sheets/fell-640.r2.toml", older))).Mistakes;
        Assert.Contains("named for revision 2", Assert.Single(wrong).Found);
        var twice = WorkbenchFiles.Read(DemoFiles.All.Append(new("sheets/fell-640.r4.toml", text))).Mistakes;
        Assert.Contains("revision 4 a second time", Assert.Single(twice).Found);
    }
}
