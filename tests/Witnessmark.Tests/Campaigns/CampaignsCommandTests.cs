using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Campaigns;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Campaigns;

public sealed partial class CampaignsCommandTests : IDisposable
{
    private static readonly string Demo = Path.Combine(AppContext.BaseDirectory, "demo", "campaigns");
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_console_examples_of_the_guide_run_as_they_stand_there()
    {
        foreach (var file in Directory.GetFiles(Demo))
            File.Copy(file, In(Path.GetFileName(file)));
        var examples = Console().Matches(Guide).ToList();
        Assert.Equal(5, examples.Count);
        foreach (var example in examples)
        {
            var words = Word().Matches(example.Groups[1].Value).Select(w => w.Value.Trim('"'));
            var ended = RealProgram.Run(
                "",
                [.. words.Select(w => w is "data" or "aside.tsv" || File.Exists(In(w)) ? In(w) : w)]
            );
            Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
            Assert.StartsWith(example.Groups[2].Value, ended.Output.ReplaceLineEndings("\n"));
        }
    }

    [Fact]
    public void The_list_of_the_guide_is_taken_in()
    {
        File.WriteAllText(In("own.toml"), Toml().Match(Guide).Groups[1].Value);
        var ended = RealProgram.Run("", "campaigns", "import", In("own.toml"), "--data", In("data"));
        Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
        Assert.StartsWith("2 rows: 2 new", ended.Output);
    }

    [Fact]
    public void Totals_and_answers_as_JSON()
    {
        var totals = Json(
            RealProgram.Run(
                "",
                "campaigns",
                "import",
                Path.Combine(Demo, "recalls.tsv"),
                "--data",
                folder.Path,
                "--json"
            )
        );
        Assert.Equal(
            (5, 5, 0),
            (
                totals.GetProperty("rows").GetInt32(),
                totals.GetProperty("new").GetInt32(),
                totals.GetProperty("setAside").GetInt32()
            )
        );
        RealProgram.Run("", "campaigns", "import", Path.Combine(Demo, "bulletins.toml"), "--data", folder.Path);
        var answer = Json(For("--year", "2024", "--vin", "GZ0FE64C8RH000412", "--json"));
        Assert.True(answer.GetProperty("lookedUp").GetBoolean());
        Assert.Equal(
            [
                "26X-011 may-concern True False",
                "26X-004 may-concern False True",
                "TW-31 concerns  ",
                "24X-090 may-concern False False",
            ],
            answer
                .GetProperty("campaigns")
                .EnumerateArray()
                .Select(c =>
                    $"{c.GetProperty("number")} {c.GetProperty("outcome")} {c.GetProperty("doNotRide")} {c.GetProperty("parkOutside")}"
                )
        );
        Assert.Equal("FELL 640 R", answer.GetProperty("alike")[0].GetString());
    }

    [Fact]
    public void Warnings_stand_first_and_in_capitals_and_never_on_what_does_not_concern_it()
    {
        RealProgram.Run("", "campaigns", "import", Path.Combine(Demo, "recalls.tsv"), "--data", folder.Path);
        var said = For("--year", "2024").Output;
        Assert.Contains("DO NOT RIDE. 26X-011", said);
        Assert.Contains("PARK OUTSIDE. 26X-004", said);
        Assert.Contains("may concern this machine: the public list does not say which machines", said);
        Assert.Contains("0 concern it, 3 may concern it, 0 do not.", said);
        Assert.Contains("Not looked in: FELL 640 R.", said);
        Assert.Contains("No campaign in these lists.", For("--year", "1999", "--model", "Other").Output);
    }

    [Fact]
    public void Without_a_list_nothing_is_looked_up_and_that_is_not_none()
    {
        var ended = For("--year", "2024");
        Assert.Equal(3, ended.ExitCode);
        Assert.Contains("Not looked up", ended.Errors);
        Assert.Empty(ended.Output);
    }

    [Theory]
    [InlineData("year: \"24\"", "--year", "24")]
    [InlineData("vin: \"GZ0\"", "--year", "2024", "--vin", "GZ0")]
    [InlineData("built: \"1.2.2024\"", "--year", "2024", "--built", "1.2.2024")]
    [InlineData("make: \"--.\"", "--year", "2024", "--make", "--.")]
    public void A_question_that_cannot_be_read(string says, params string[] question)
    {
        var ended = For(question);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(says, ended.Errors);
    }

    [Fact]
    public void What_cannot_be_read_is_said_counted_and_kept_byte_for_byte()
    {
        byte[] torn = [(byte)'x', 0xe9, (byte)'\t', (byte)'y'];
        File.WriteAllBytes(In("list.tsv"), [.. File.ReadAllBytes(Path.Combine(Demo, "recalls.tsv")), .. torn]);
        var ended = RealProgram.Run(
            "",
            "campaigns",
            "import",
            In("list.tsv"),
            "--data",
            In("data"),
            "--set-aside",
            In("aside.tsv")
        );
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains("1 set aside", ended.Output);
        Assert.Equal("line 6: 2 fields; 22 to 29 are allowed", ended.Errors.Trim());
        byte[] kept = [.. "6\t2 fields; 22 to 29 are allowed\t"u8, .. torn, (byte)'\n'];
        Assert.Equal(kept, File.ReadAllBytes(In("aside.tsv")));
    }

    [Theory]
    [InlineData("nothing.tsv", "there is no such file")]
    [InlineData("packed.zip", "a packed file (zip)")]
    [InlineData("wrong.toml", "wrong.toml:1:1: unknown key \"campaign\"")]
    public void A_file_that_is_no_list(string file, string says)
    {
        File.WriteAllText(In("packed.zip"), "PK\u0003\u0004rest");
        File.WriteAllText(In("wrong.toml"), "campaign = 1\n");
        var ended = RealProgram.Run("", "campaigns", "import", In(file), "--data", In("data"));
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(says, ended.Errors);
        Assert.False(Directory.Exists(In("data")));
    }

    [Fact]
    public void The_list_itself_is_never_written_over()
    {
        File.Copy(Path.Combine(Demo, "recalls.tsv"), In("list.tsv"));
        var ended = RealProgram.Run(
            "",
            "campaigns",
            "import",
            In("list.tsv"),
            "--data",
            In("data"),
            "--set-aside",
            In("list.tsv")
        );
        Assert.Equal(2, ended.ExitCode);
        Assert.Equal(File.ReadAllBytes(Path.Combine(Demo, "recalls.tsv")), File.ReadAllBytes(In("list.tsv")));
    }

    [Fact]
    public void A_withdrawn_campaign_is_gone_from_the_answer_and_said_at_its_end()
    {
        RealProgram.Run("", "campaigns", "import", Path.Combine(Demo, "bulletins.toml"), "--data", folder.Path);
        Assert.Contains("TW-31  Side stand switch", For("--year", "2024").Output);
        var ended = Withdraw("tw31", "called off");
        Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
        Assert.Matches(
            @"^TW-31 is withdrawn by Ines Tallow: called off\. Its 2 records .*\r?\nbulletins\.toml, taken in on \d{4}-\d\d-\d\d, still names it",
            ended.Output
        );
        var said = For("--year", "2024").Output;
        Assert.DoesNotContain("Side stand switch", said);
        Assert.Matches(@"Withdrawn: TW-31, by Ines Tallow on \d{4}-\d\d-\d\d: called off\.", said);
        Assert.DoesNotContain("Withdrawn", For("--year", "1999").Output);
        RealProgram.Run("", "campaigns", "import", Path.Combine(Demo, "bulletins.toml"), "--data", folder.Path);
        said = For("--year", "2024").Output;
        Assert.Contains("TW-31  Side stand switch", said);
        Assert.DoesNotContain("Withdrawn", said);
    }

    [Theory]
    [InlineData(
        "TW-32",
        "called off",
        2,
        "There is no campaign \"TW-32\" in the shop's own lists. Right would be \"TW-31\"."
    )]
    [InlineData("26X-004", "called off", 2, "26X-004 stands in the public list, which only the regulator changes.")]
    [InlineData("TW-31", " ", 2, "--because: nothing stands there")]
    public void What_cannot_be_withdrawn_is_told_with_what_would_be_right(
        string number,
        string because,
        int code,
        string says
    )
    {
        foreach (var list in (string[])["bulletins.toml", "recalls.tsv"])
            RealProgram.Run("", "campaigns", "import", Path.Combine(Demo, list), "--data", folder.Path);
        var ended = Withdraw(number, because);
        Assert.Equal((code, ""), (ended.ExitCode, ended.Output));
        Assert.Contains(says, ended.Errors);
        Assert.Contains("TW-31  Side stand switch", For("--year", "2024").Output);
    }

    [Fact]
    public void Without_any_list_nothing_is_withdrawn() => Assert.Equal(3, Withdraw("TW-31", "called off").ExitCode);

    private RealProgram.Ended Withdraw(string number, string because) =>
        RealProgram.Run(
            "",
            "campaigns",
            "withdraw",
            number,
            "--because",
            because,
            "--by",
            "Ines Tallow",
            "--data",
            folder.Path
        );

    [Theory]
    [InlineData(0, "0 %, 1 rows")]
    [InlineData(25, "25 %, 1 rows, 30 s left")]
    [InlineData(100, "100 %, 1 rows, 0 s left")]
    public void Progress_says_how_far_and_how_long(long bytes, string says) =>
        Assert.Equal(says, ProgressLine.Text(new(1, bytes, 100), TimeSpan.FromSeconds(10)));

    [Fact]
    public async Task The_server_answers_from_the_same_lists()
    {
        using var shop = RunningShop.Serve(folder.Path); // the demo takes its campaigns in
        var answer = await shop.Get("/api/campaigns?make=tarnmoor&model=fell%20640&year=2024&vin=GZ0FE64C8RH000412");
        Assert.Equal(
            ["26X-011", "26X-004", "TW-31", "24X-090"],
            answer.GetProperty("campaigns").EnumerateArray().Select(c => c.GetProperty("number").GetString())
        );
        Assert.Equal("may-concern", answer.GetProperty("campaigns")[0].GetProperty("outcome").GetString());
        var unknownYear = await shop.Get("/api/campaigns?make=tarnmoor&model=fell%20640");
        Assert.True(unknownYear.GetProperty("campaigns").GetArrayLength() > 4);
        using var wrong = await shop.Client.GetAsync(
            "/api/campaigns?make=tarnmoor&model=&year=2024",
            TestContext.Current.CancellationToken
        );
        Assert.Equal(400, (int)wrong.StatusCode);
        Assert.Contains("model:", await wrong.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private static string Guide =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "campaigns.md")).ReplaceLineEndings("\n");

    private string In(string name) => Path.Combine(folder.Path, name);

    private RealProgram.Ended For(params string[] question) =>
        RealProgram.Run(
            "",
            [
                "campaigns",
                "for",
                "--data",
                folder.Path,
                .. question.Contains("--make") ? [] : new[] { "--make", "TARN-MOOR" },
                .. question.Contains("--model") ? [] : new[] { "--model", "fell640" },
                .. question,
            ]
        );

    private static JsonElement Json(RealProgram.Ended ended) => JsonDocument.Parse(ended.Output).RootElement;

    [GeneratedRegex(
        "^```console\n\\$ witnessmark ([^\n]*)\n(.*?)^```",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Console();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();

    [GeneratedRegex("```toml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Toml();
}
