using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Sheets;

public sealed class SheetsCommandTests : IDisposable
{
    private readonly TempFolder folder = new();
    private static readonly string Demo = Path.Combine(AppContext.BaseDirectory, "demo", "sheets", "fell-640.toml");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Checking_tells_every_mistake_with_line_and_column_and_ends_with_2()
    {
        var file = Written(
            "bad.toml",
            File.ReadAllText(Demo)
                .Replace("13 to 32 mm", "32 to 13 mm")
                .Replace("origin = \"shop\"", "orign = \"shop\"")
        );
        var ended = RealProgram.Run("", "sheets", "check", file);
        Assert.Equal(2, ended.ExitCode);
        Assert.Matches(@"bad\.toml:\d+:\d+: ""32 to 13 mm"": the ends are swapped", ended.Errors);
        Assert.Contains("unknown key \"orign\"", ended.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Checking_a_clean_sheet_names_what_to_look_at_again()
    {
        var file = Written(
            "fell-640.toml",
            File.ReadAllText(Demo)
                .Replace("torque = \"29 N·m\"\nalso = \"21 lbf·ft\"", "torque = \"29 N·m\"\nbolt = \"M6 8.8\"")
        );
        var ended = RealProgram.Run("", "sheets", "check", file);
        Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
        Assert.Contains(
            "Look again at oil.drain-plug: 29 N·m would stretch M6 8.8",
            ended.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_sheet_taken_in_twice_is_two_revisions_and_both_come_out_again()
    {
        using (RunningShop.Serve(folder.Path)) { }
        var file = Written("fell-640.toml", File.ReadAllText(Demo).Replace("2 to 4 mm", "2 to 5 mm"));
        var taken = Import(file);
        Assert.Equal((0, ""), (taken.ExitCode, taken.Errors));
        Assert.Contains("taken in as revision 5", taken.Output, StringComparison.Ordinal);
        Assert.Contains("2 to 5 mm", Export().Output, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(Demo), Export("--revision", "4").Output);
        Assert.Contains(
            "revision 9 of \"fell-640\"; it has 4, 5",
            Export("--revision", "9").Errors,
            StringComparison.Ordinal
        );
        Assert.Equal(2, Export("--revision", "9").ExitCode);
        // the shop opens with both
        using var again = RunningShop.Serve(folder.Path);
    }

    [Fact]
    public void What_is_there_already_is_nothing_new_and_a_bad_one_changes_nothing()
    {
        using (RunningShop.Serve(folder.Path)) { }
        Assert.Contains("nothing differs", Import(Demo).Output, StringComparison.Ordinal);
        var bad = Written(
            "fell-640.toml",
            File.ReadAllText(Demo).Replace("[figures.\"chain.slack\"]", "[figures.\"chain.slak\"]")
        );
        var refused = Import(bad);
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("Nothing was taken in.", refused.Errors, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(Demo), Export().Output);
    }

    private RealProgram.Ended Import(string file) =>
        RealProgram.Run(
            "",
            "sheets",
            "import",
            file,
            "--data",
            folder.Path,
            "--by",
            "Ines Tallow",
            "--why",
            "new edition"
        );

    private RealProgram.Ended Export(params string[] more) =>
        RealProgram.Run("", ["sheets", "export", "fell-640", "--data", folder.Path, .. more]);

    private string Written(string name, string text)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("sheets").FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
