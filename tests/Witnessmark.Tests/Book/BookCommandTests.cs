using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Book;

public sealed class BookCommandTests : IDisposable
{
    private const string Own =
        "[points.mirrors]\ntitle = \"Our mirrors\"\nguards = \"use\"\nhands = \"1 min\"\nreading = { kind = \"done\", words = \"Look.\" }\n";

    private readonly TempFolder folder = new();

    [Fact]
    public void The_book_that_comes_with_the_program_has_no_mistake_and_is_counted()
    {
        var ended = RealProgram.Run("", "book", "check");
        Assert.Equal(("", 0), (ended.Errors, ended.ExitCode));
        Assert.Matches(@"(?m)^brakes +\d+ points, \d+ for safety\r?$", ended.Output);
        Assert.Matches(@"(?m)^whole book +\d{3} points, \d+ for safety\r?$", ended.Output);
        Assert.Matches(@"(?m)^for handover +\d+ points, \d h \d+ min of hands-on work\r?$", ended.Output);
        Assert.Contains("No mistake.", ended.Output);
    }

    [Fact]
    public void A_shops_own_book_over_it_is_told_name_by_name()
    {
        var own = Put("own-book", "ours.toml", Own);
        var ended = RealProgram.Run("", "book", "check", Shipped, own);
        Assert.Equal(("", 0), (ended.Errors, ended.ExitCode));
        Assert.Matches(
            "own-book/ours.toml:1: point \"mirrors\" stands here instead of in .*book/lights-and-body.toml, line \\d+",
            ended.Output
        );
        Assert.Matches(@"(?m)^ours +1 point , 0 for safety\r?$", ended.Output);
    }

    [Fact]
    public void All_mistakes_come_at_once_with_their_places()
    {
        var wrong = Put("wrong", "w.toml", Own.Replace("\"use\"", "\"usefulness\"").Replace("\"1 min\"", "\"1 mm\""));
        var ended = RealProgram.Run("", "book", "check", wrong);
        Assert.Equal(("", 2), (ended.Output, ended.ExitCode));
        Assert.Contains("w.toml:3:10: the text \"usefulness\"; right would be ", ended.Errors);
        Assert.Contains("w.toml:4:9: ", ended.Errors);
        Assert.Contains("2 mistakes.", ended.Errors);
    }

    [Fact]
    public void A_folder_that_is_not_there_or_empty_is_told()
    {
        var empty = Directory.CreateDirectory(Path.Combine(folder.Path, "empty")).FullName;
        var ended = RealProgram.Run("", "book", "check", Path.Combine(folder.Path, "nowhere"), empty);
        Assert.Equal(("", 2), (ended.Output, ended.ExitCode));
        Assert.Contains("there is no such folder", ended.Errors);
        Assert.Contains("no file ends in .toml", ended.Errors);
    }

    // docs/points.md is what "witnessmark book points" prints
    [Fact]
    public void The_page_of_points_is_that_of_the_book()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "points.md"));
        var printed = RealProgram.Run("", "book", "points").Output;
        Assert.Equal(page.ReplaceLineEndings("\n"), printed.ReplaceLineEndings("\n"));
    }

    public void Dispose() => folder.Dispose();

    private static string Shipped => Path.Combine(AppContext.BaseDirectory, "book");

    private string Put(string name, string file, string text)
    {
        var path = Directory.CreateDirectory(Path.Combine(folder.Path, name)).FullName;
        File.WriteAllText(Path.Combine(path, file), text);
        return path;
    }
}
