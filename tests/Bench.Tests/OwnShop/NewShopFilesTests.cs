using FsCheck.Fluent;
using FsCheck.Xunit;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.OwnShop;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.OwnShop;

// Source: TOML 1.0, basic strings; and our own reader, by which the files have to mean what was given.
public class NewShopFilesTests
{
    private static readonly string[] None = [];

    /// <summary>What people could type, or paste: ends of strings and tables, other kinds of values, right-to-left text and its marks, line ends.</summary>
    private static readonly string[] Pieces =
    [
        "Ada",
        "\"",
        "'''",
        "\"\"\"",
        "\\",
        "\\u0022",
        "\n",
        "\r\n",
        "\t",
        "]",
        "[workshop]",
        "#",
        " = ",
        "true",
        "2026-01-01",
        "ورشة",
        "בית",
        "\u202e",
        "\u200f",
        "é",
        "🛵",
        "\u0085",
        "\u2028",
        "\u0001",
        "\u007f",
        "ﬀ",
        " ",
    ];

    [Property(MaxTest = 60)]
    public FsCheck.Property What_is_written_reads_back_as_it_was_given() =>
        Prop.ForAll(
            (
                from name in Texts
                from one in Texts
                from two in Texts
                from tool in Texts
                from machine in Texts
                from plate in Texts
                select (name, one, two, tool, machine, plate)
            ).ToArbitrary(),
            t =>
            {
                string[] people = [.. new[] { t.one, t.two }.Distinct()];
                var rule = Rule with { Id = $"own tool {t.tool}", Name = t.tool };
                var shop = new NewShop(t.name, people, people[^1])
                {
                    Jurisdiction = "DE",
                    Paper = "Letter",
                    Language = "de",
                    Instruments = [rule],
                    Machine = Machine with { Name = t.machine, Plate = t.plate, Vin = null },
                };
                var bench = Read(shop);
                Assert.Equal(t.name, bench.Workshop.Name);
                Assert.Equal(people, bench.Workshop.People);
                Assert.Equal([people[^1]], bench.Workshop.Leads);
                Assert.Equal(
                    ("DE", "Letter", "de"),
                    (bench.Workshop.Jurisdiction!.Code, bench.Workshop.Paper, bench.Workshop.Language)
                );
                var instrument = Assert.Single(bench.Workshop.Instruments.Values);
                Assert.Equal(
                    ($"own tool {t.tool}", t.tool, 1.0, 0.5, 300.0),
                    (instrument.Id, instrument.Name, instrument.Resolution, instrument.PermissibleError, instrument.Max)
                );
                Assert.Equal(new DateOnly(2026, 3, 9), instrument.Checked);
                var first = Assert.Single(bench.Workshop.Machines.Values);
                Assert.Equal((t.machine, t.plate, ""), (first.Name, first.Plate, first.Vin));
                Assert.Equal(
                    (t.machine, "chain", 2),
                    (
                        bench.Newest(first.Sheet)!.Name,
                        bench.Newest(first.Sheet)!.Drive,
                        bench.Newest(first.Sheet)!.Cylinders
                    )
                );
            }
        );

    [Fact]
    public void A_shop_without_machine_and_tools_is_one()
    {
        var bench = Read(new("Weir Cycles", ["Ada Brook"], "Ada Brook"));
        Assert.Equal("weir-cycles", bench.Workshop.Id);
        Assert.Empty(bench.Workshop.Machines);
        Assert.Empty(bench.Sheets);
        Assert.NotEmpty(bench.Book.Points);
    }

    [Theory]
    [InlineData("Harrow Lane", "harrow-lane-own")]
    [InlineData("Weir & Söhne, 2nd", "weir-s-hne-2nd")]
    [InlineData("ورشة", "shop")]
    [InlineData("../../etc", "etc")]
    public void Entries_know_a_shop_by_letters_that_no_other_shop_has(string name, string id) =>
        Assert.Equal(id, NewShopFiles.IdOf(name, ["harrow-lane"]));

    [Fact]
    public void Mistakes_are_those_of_the_reader_of_the_files()
    {
        var shop = new NewShop(" ", ["Ada", "Ada"], "Bo")
        {
            Jurisdiction = "Germany",
            Instruments = [Rule with { Resolution = "1 mn", Checked = "last spring" }],
            Machine = Machine with
            {
                Vin = "GZ0",
                Facts = new Dictionary<string, string> { ["brakes"] = "disc" },
            },
        };
        var (files, mistakes) = NewShopFiles.Of(shop, DemoFiles.All, None);
        Assert.Null(files);
        var said = string.Join('\n', mistakes);
        Assert.Contains("empty text", said);
        Assert.Contains("\"Ada\" a second time", said);
        Assert.Contains("\"Bo\" is not one of the people", said);
        Assert.Contains("a code of ISO 3166", said);
        Assert.Contains("resolution = text with a unit", said);
        Assert.Contains("a day such as 2026-03-31", said);
        Assert.Contains("17 digits and capital letters", said);
        Assert.Contains("unknown key \"brakes\"", said);
    }

    private static NewInstrument Rule =>
        new("steel-rule", "Steel rule", "measure", "mm", "1 mm", "0.5 mm", 0)
        {
            From = "0 mm",
            To = "300 mm",
            Checked = "2026-03-09",
        };

    private static NewMachine Machine =>
        new(
            "Fell 640",
            "chain",
            2,
            new Dictionary<string, string>
            {
                ["kind"] = "motorcycle",
                ["wheels"] = "spoked",
                ["front-brake"] = "disc",
                ["rear-brake"] = "drum",
                ["clutch"] = "cable",
                ["throttle"] = "cable",
                ["fuel"] = "injection",
                ["cooled"] = "liquid",
                ["valves"] = "shims",
                ["battery"] = "sealed",
                ["abs"] = "true",
                ["tether"] = "false",
                ["winch"] = "false",
            }
        )
        {
            Vin = "GZ0FE64C8RH000412",
            Year = 2024,
        };

    private static FsCheck.Gen<string> Texts =>
        from pieces in Gen.ArrayOf(Gen.Elements(Pieces))
        let text = string.Concat(pieces)
        select string.IsNullOrWhiteSpace(text) ? "Ada" : text;

    private static Workbench Read(NewShop shop)
    {
        var (files, mistakes) = NewShopFiles.Of(shop, DemoFiles.All, None);
        Assert.Empty(mistakes);
        var book = DemoFiles.All.Where(f => f.Name.StartsWith("book/", StringComparison.Ordinal));
        var (bench, again) = WorkbenchFiles.Read([.. book, .. files!]);
        Assert.Empty(again);
        return bench!;
    }
}
