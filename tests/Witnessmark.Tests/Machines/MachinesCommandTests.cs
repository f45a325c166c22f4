using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Machines;

public sealed partial class MachinesCommandTests : IDisposable
{
    private const string Map =
        "id=No,vin=Chassis,plate=Reg,name=Model,distance-km=Km,distance-on=Seen,owner=Customer,days=dd.MM.yyyy";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_examples_of_the_guide_run_as_they_stand_there()
    {
        File.WriteAllText(In("list.csv"), Csv().Match(Guide).Groups[1].Value);
        var examples = Console().Matches(Guide).ToList();
        Assert.Equal(3, examples.Count);
        foreach (var example in examples)
        {
            var words = Word().Matches(example.Groups[1].Value).Select(w => w.Value.Trim('"'));
            var ended = RealProgram.Run(
                "",
                [.. words.Select(w => w is "data" or "aside.tsv" or "list.csv" ? In(w) : w)]
            );
            Assert.Equal(0, ended.ExitCode);
            Assert.StartsWith(example.Groups[2].Value.TrimEnd(), ended.Output.ReplaceLineEndings("\n"));
        }
        var aside = File.ReadAllLines(In("aside.tsv"));
        Assert.StartsWith("4\tvin: \"FR-1932-77\" (10 signs)", aside[0]);
        Assert.StartsWith("5\tdistance-km: \"12,400\" is no number", aside[1]);
        Assert.EndsWith(",\"12,400\",03.11.2025,Cy Marsh,,blue", aside[1]);
    }

    [Fact]
    public void The_mapping_file_of_the_guide_takes_frame_numbers()
    {
        File.WriteAllText(In("list.csv"), Csv().Match(Guide).Groups[1].Value);
        File.WriteAllText(In("map.toml"), Toml().Match(Guide).Groups[1].Value);
        var ended = Import("--map", In("map.toml"));
        Assert.StartsWith("4 rows: 4 taken", ended.Output);
        Assert.Contains("Not taken from the list: \"Reg\", \"Brand\"", ended.Errors);
    }

    [Fact]
    public void As_JSON_every_row_is_told()
    {
        File.WriteAllText(In("list.csv"), Csv().Match(Guide).Groups[1].Value);
        Import("--map", Map);
        var told = JsonDocument.Parse(Import("--map", Map, "--json").Output).RootElement;
        Assert.Equal((4, 0, 2, 2), (Number("rows"), Number("taken"), Number("same"), Number("setAside")));
        Assert.Equal(
            ["2 17 same", "3 18 same", "4  set-aside", "5  set-aside"],
            told.GetProperty("each")
                .EnumerateArray()
                .Select(e => $"{e.GetProperty("line")} {e.GetProperty("id")} {e.GetProperty("outcome")}")
        );
        int Number(string key) => told.GetProperty(key).GetInt32();
    }

    [Theory]
    [InlineData("id=No,name=Modell", "the list has no column \"Modell\"; right would be \"Model\"")]
    [InlineData("id=No,name=Model,plat=Reg", "unknown key \"plat\"; right would be \"plate\"")]
    [InlineData("nothing.toml", "nothing.toml")]
    public void A_map_that_does_not_fit_imports_nothing(string map, string says)
    {
        File.WriteAllText(In("list.csv"), Csv().Match(Guide).Groups[1].Value);
        var ended = Import("--map", map);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(says, ended.Errors);
        Assert.False(Directory.Exists(In("data")));
    }

    [Fact]
    public void A_list_that_is_torn_in_the_middle_leaves_everything_as_it_was()
    {
        File.WriteAllBytes(In("list.csv"), [.. "id,name\n1,Fell\n2,F"u8, 0xE9, .. "ll\n"u8]);
        var ended = Import();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("not UTF-8", ended.Errors);
        File.WriteAllText(In("list.csv"), "id,name\n1,Fell\n2,\"" + new string('x', 20_000));
        Assert.Contains("is a quote not closed?", Import().Errors);
        Assert.Equal(
            "0 machines.",
            RealProgram.Run("", "machines", "find", "fell", "--data", In("data")).Output.Trim()
        );
    }

    [Fact]
    public void The_list_itself_is_never_written_over()
    {
        File.WriteAllText(In("list.csv"), "id,name\n1,Fell\n");
        Assert.Equal(2, Import("--set-aside", In("list.csv")).ExitCode);
        Assert.Equal("id,name\n1,Fell\n", File.ReadAllText(In("list.csv")));
    }

    [Theory]
    [InlineData(3, "No machines were ever imported", "find", "fell")]
    [InlineData(3, "No machines were ever imported", "forget-owner", "1")]
    public void Without_a_register_nothing_is_found(int code, string says, params string[] asked)
    {
        var ended = RealProgram.Run("", ["machines", .. asked, "--data", In("data")]);
        Assert.Equal(code, ended.ExitCode);
        Assert.Contains(says, ended.Errors);
    }

    [Fact]
    public void Questions_that_cannot_be_answered()
    {
        File.WriteAllText(In("list.csv"), "id,name\n1,Fell\n");
        Import();
        var find = RealProgram.Run("", "machines", "find", "1-2", "--data", In("data"));
        Assert.Equal((2, true), (find.ExitCode, find.Errors.Contains("at least 3 letters or digits")));
        var forget = RealProgram.Run("", "machines", "forget-owner", "2", "--data", In("data"));
        Assert.Equal((2, true), (forget.ExitCode, forget.Errors.Contains("no machine \"2\"")));
    }

    [Fact]
    public async Task The_server_finds_machines_and_tells_distances_and_jobs()
    {
        var list = "id,name,plate,distance-km,distance-on,owner\n{0},Fell 640,HL 412,{1},{2},Ada Brook\n";
        File.WriteAllText(In("list.csv"), string.Format(list, "fell-640-0412", 30000, "2024-01-01"));
        RealProgram.Run("", "machines", "import", In("list.csv"), "--data", folder.Path);
        File.WriteAllText(In("list.csv"), string.Format(list, "fell-640-0412", 12000, "2026-01-01"));
        RealProgram.Run("", "machines", "import", In("list.csv"), "--data", folder.Path);
        using var shop = RunningShop.Serve(folder.Path);
        var found = await shop.Get("/api/machines?find=hl41");
        var line = Assert.Single(found.GetProperty("machines").EnumerateArray());
        Assert.Equal("fell-640-0412", line.GetProperty("id").GetString());
        var machine = await shop.Get("/api/machines/fell-640-0412");
        var last = machine.GetProperty("distances").EnumerateArray().Last();
        Assert.Equal("went-back", last.GetProperty("mark").GetString());
        Assert.Equal("412", Assert.Single(machine.GetProperty("jobs").EnumerateArray()).GetString());
        Assert.Equal("Ada Brook", machine.GetProperty("owner").GetProperty("name").GetString());
        foreach (var (path, status) in new[] { ("?find=x", 400), ("", 400), ("/nobody", 404) })
        {
            using var wrong = await shop.Client.GetAsync("/api/machines" + path, TestContext.Current.CancellationToken);
            Assert.Equal(status, (int)wrong.StatusCode);
        }
    }

    [Fact]
    public async Task An_owner_is_forgotten_over_HTTP_and_the_record_stays()
    {
        File.WriteAllText(In("list.csv"), "id,name,owner,contact\n17,Fell 640,Ada Brook,0555 010\n18,Scar,,\n");
        RealProgram.Run("", "machines", "import", In("list.csv"), "--data", folder.Path);
        using var shop = RunningShop.Serve(folder.Path);
        foreach (
            var (id, status, says) in new[]
            {
                ("17", 200, "true"),
                ("17", 200, "false"),
                ("18", 200, "false"),
                ("19", 404, "no such machine"),
            }
        )
        {
            using var answer = await shop.Client.DeleteAsync(
                $"/api/machines/{id}/owner",
                TestContext.Current.CancellationToken
            );
            Assert.Equal(status, (int)answer.StatusCode);
            Assert.Contains(says, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        }
        var machine = await shop.Get("/api/machines/17");
        Assert.Equal("Fell 640", machine.GetProperty("name").GetString());
        Assert.Equal(JsonValueKind.Null, machine.GetProperty("owner").ValueKind);
        var found = await shop.Get("/api/machines?find=brook");
        Assert.Empty(found.GetProperty("machines").EnumerateArray());
    }

    private static string Guide =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "machines.md")).ReplaceLineEndings("\n");

    private string In(string name) => Path.Combine(folder.Path, name);

    private RealProgram.Ended Import(params string[] more) =>
        RealProgram.Run("", ["machines", "import", In("list.csv"), "--data", In("data"), .. more]);

    [GeneratedRegex(
        "^```console\n\\$ witnessmark ([^\n]*)\n(.*?)^```",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Console();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();

    [GeneratedRegex("```csv\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Csv();

    [GeneratedRegex("```toml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Toml();
}
