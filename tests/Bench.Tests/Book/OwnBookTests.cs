using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Book;

/// <summary>A shop's own book over the one that comes with the program.</summary>
public class OwnBookTests
{
    private const string Own = """
        [points.mirrors]
        title = "Mirrors, our way"
        guards = "use"
        hands = "1 min"
        reading = { kind = "done", words = "Look." }
        [points.courtesy]
        title = "Courtesy"
        guards = "use"
        hands = "1 min"
        asks-again = ["wash"]
        reading = { kind = "done", words = "Smile." }
        [purposes.repair]
        mirrors = "We always look."
        [reach."rear stand"]
        words = "Our lift."
        set = "1 min"
        [figure-keys]
        "lamp.aim" = { unit = "%", words = "as our wall says" }
        """;

    [Fact]
    public void It_adds_and_overrides_name_by_name_and_all_else_stays()
    {
        var (bench, mistakes) = WorkbenchFiles.Read(DemoFiles.All.Append(new("own-book/ours.toml", Own)));
        Assert.Empty(mistakes);
        var book = bench!.Book;
        Assert.Equal(DemoFiles.Bench.Book.Points.Count + 1, book.Points.Count);
        Assert.Equal(("Mirrors, our way", "ours"), (book.Points["mirrors"].Title, book.Points["mirrors"].Region));
        Assert.Equal(["mirrors"], book.Purposes["repair"].Select(p => p.Point));
        Assert.Equal(DemoFiles.Bench.Book.Purposes["handover"], book.Purposes["handover"]);
        Assert.Equal("Our lift.", book.Reach["rear stand"].Words);
        Assert.Contains("courtesy", book.Points["wash"].AgainAfter);
        Assert.Equal("handover", book.Purposes.Keys.First()); // still the first that is offered
    }

    [Fact]
    public void What_is_overridden_is_told_with_both_places()
    {
        var read = BookFiles.Read([Shipped, [new("own-book/ours.toml", Own)]]);
        Assert.Equal(
            ["point \"mirrors\"", "purpose \"repair\"", "reach \"rear stand\"", "figure key \"lamp.aim\""],
            read.Overridden.Select(o => o.What)
        );
        var mirrors = read.Overridden[0];
        Assert.Equal(("own-book/ours.toml", 1), (mirrors.By.File, mirrors.By.Line));
        Assert.Equal(
            ("book/lights-and-body.toml", DemoFiles.LineOf("book/lights-and-body.toml", "[points.mirrors]")),
            (mirrors.Was.File, mirrors.Was.Line)
        );
    }

    [Fact]
    public void The_last_of_three_counts()
    {
        static SourceText Wash(string layer) =>
            new(
                $"{layer}/x.toml",
                $"[points.wash]\ntitle = \"{layer}\"\nguards = \"use\"\nhands = \"1 min\"\nreading = {{ kind = \"done\", words = \"x\" }}\n"
            );
        var read = BookFiles.Read([Shipped, [Wash("one")], [Wash("two")]]);
        Assert.Equal("two", read.Book!.Points["wash"].Title);
        Assert.Equal(["book/delivery.toml", "one/x.toml"], read.Overridden.Select(o => o.Was.File));
    }

    [Fact]
    public void Twice_in_the_same_layer_is_a_mistake_there_too()
    {
        var read = BookFiles.Read([Shipped, [new("own-book/a.toml", Own), new("own-book/b.toml", Own)]]);
        Assert.Null(read.Book);
        Assert.Equal(5, read.Mistakes.Count);
        Assert.All(read.Mistakes, m => Assert.Contains("own-book/a.toml", m.Right));
    }

    [Fact]
    public void A_torn_file_invents_no_unknown_names()
    {
        var read = BookFiles.Read([
            [new("book/a.toml", "half a li"), new("book/b.toml", Own)],
        ]);
        Assert.Equal(["book/a.toml"], read.Mistakes.Select(m => m.File).Distinct());
    }

    private static IEnumerable<SourceText> Shipped => DemoFiles.All.Where(f => f.Name.StartsWith("book/"));
}
