using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;

namespace Witnessmark.Tests.Day;

/// <summary>The day on the command line; the example of docs/day.md is planned as it stands there.</summary>
public sealed class DayCommandTests : IDisposable
{
    private readonly JobOnPaper files = new();

    [Fact]
    public void The_example_of_the_page_is_planned_as_the_page_says()
    {
        var ended = RealProgram.Run("", "day", Written(Example));
        Assert.Equal("", ended.Errors);
        Assert.Equal(
            Page("```console\n\\$ witnessmark day demo/days/example.toml\n(.*?)```"),
            ended.Output.ReplaceLineEndings("\n")
        );
        Assert.Equal(4, ended.ExitCode);
    }

    [Fact]
    public void As_JSON_it_says_the_same()
    {
        var ended = RealProgram.Run("", "day", Written(Example), "--json");
        var day = JsonNode.Parse(ended.Output)!;
        Assert.Equal(80, (int)day["latenessMinutes"]!);
        Assert.Equal(80, (int)day["latenessAtLeast"]!);
        Assert.True((bool)day["proven"]!);
        var late = Assert.Single(day["jobs"]!.AsArray(), j => j!["lateMinutes"] is not null)!;
        Assert.Equal("414", (string?)late["job"]);
        Assert.Equal("2026-11-26T12:20", (string?)late["ready"]);
        Assert.StartsWith("Its parts arrive too late", (string?)late["because"]);
    }

    [Fact]
    public void All_kept_promises_end_with_0()
    {
        // 09:25, when Bram is free, and 50 + 20 + 40 min: 11:15
        var kept = Example.Replace("parts = 2026-11-26T10:30:00", "").Replace("26T11:00:00", "26T11:15:00");
        var ended = RealProgram.Run("", "day", Written(kept));
        Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
        Assert.Contains("Lateness: 0 min, proven the least.", ended.Output);
    }

    [Theory]
    [InlineData(
        "hands = \"40 min\"",
        "hands = \"0 min\"",
        "0 min of hands-on work in one piece; right would be 1 to 1440 min"
    )]
    [InlineData(
        "hands = \"40 min\"",
        "hands = \"1500 min\"",
        "1500 min of hands-on work in one piece; right would be 1 to 1440 min"
    )]
    [InlineData("hands = \"40 min\"", "hands = \"-5 min\"", "\"-5 min\"; right would be a time from 0 min to 7 day")]
    [InlineData(
        "by = \"Ines Tallow\"",
        "by = \"Ines Talow\"",
        "\"Ines Talow\" is not among the people of the workshop; right would be \"Ines Tallow\""
    )]
    [InlineData("lift = \"Lift 1\"", "lift = \"Lift 9\"", "there is no lift \"Lift 9\"; right would be")]
    [InlineData(
        "at = 2026-11-26T08:00:00",
        "at = 2026-11-26T09:00:00",
        "2026-11-26T09:00 is still to come; right would be"
    )]
    [InlineData(
        "purpose = \"handover\"",
        "purpose = \"handower\"",
        "there is no purpose \"handower\"; right would be \"handover\""
    )]
    [InlineData("promised = 2026-11-26T11:00:00", "promised = \"soon\"", "right would be promised = a moment such as")]
    [InlineData("now = 2026-11-26T08:00:00", "", "\"now\" is missing")]
    [InlineData("skills = [\"brakes\"]", "skils = [\"brakes\"]", "unknown key \"skils\"; right would be \"skills\"")]
    public void A_mistake_is_told_with_what_would_be_right(string old, string wrong, string told)
    {
        Assert.Contains(old, Example);
        var ended = RealProgram.Run("", "day", Written(Example.Replace(old, wrong)));
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(told, ended.Errors);
        Assert.Equal("", ended.Output);
    }

    [Fact]
    public void A_skill_that_nobody_has_is_named_and_the_rest_is_planned()
    {
        // the demo's Ines can do everything, so the skill is one that her own table leaves out
        var shop = File.ReadAllText(Shop)
            .Replace(
                "[technicians.\"Bram",
                "[technicians.\"Ines Tallow\"]\nskills = [\"brakes\"]\n\n[technicians.\"Bram"
            );
        File.WriteAllText(Shop, shop);
        var ended = RealProgram.Run(
            "",
            "day",
            Written(Example.Replace("skills = [\"brakes\"]", "skills = [\"paint\"]"))
        );
        Assert.Equal(4, ended.ExitCode);
        Assert.Contains("? Ridge 500 (414): no place. Nobody in the shop has the skill paint.", ended.Output);
        Assert.Contains("Moss 125 (415), Lift 2: Tyres", ended.Output);
    }

    [Theory]
    [InlineData(
        "monday = [\"08:00-12:30\", \"13:15-17:30\"]",
        "monday = [\"08:00-13:30\", \"13:15-17:30\"]",
        "begins before the one before it has ended"
    )]
    [InlineData(
        "monday = [\"08:00-12:30\", \"13:15-17:30\"]",
        "monday = [\"12:30-08:00\"]",
        "is no time from one clock time to a later one"
    )]
    [InlineData(
        "closed = [2026-12-25, 2026-12-26]",
        "closed = [\"Christmas\"]",
        "right would be closed = a list of days such as [2026-12-25]"
    )]
    [InlineData(
        "[technicians.\"Bram Okello\"]",
        "[technicians.\"Bram Okelo\"]",
        "\"Bram Okelo\" is not among the people of the workshop"
    )]
    public void Hours_and_people_of_the_workshop_file_are_looked_at(string old, string wrong, string told)
    {
        Assert.Contains(old, File.ReadAllText(Shop));
        File.WriteAllText(Shop, File.ReadAllText(Shop).Replace(old, wrong));
        var ended = RealProgram.Run("", "day", Written(Example));
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(told, ended.Errors);
    }

    public void Dispose() => files.Dispose();

    private static string Example => Page("```toml\n(.*?)```");

    private string Shop => Path.Combine(Path.GetDirectoryName(files.JobFile)!, "..", "shop.toml");

    private static string Page(string block) =>
        Regex
            .Match(
                File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "day.md")).ReplaceLineEndings("\n"),
                block,
                RegexOptions.Singleline
            )
            .Groups[1]
            .Value;

    private string Written(string day)
    {
        var folder = Path.Combine(Path.GetDirectoryName(files.JobFile)!, "..", "days");
        Directory.CreateDirectory(folder);
        var file = Path.Combine(folder, "example.toml");
        File.WriteAllText(file, day);
        return file;
    }
}
