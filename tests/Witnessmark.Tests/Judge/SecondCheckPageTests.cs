using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;

namespace Witnessmark.Tests.Judge;

/// <summary>The examples of docs/second-check.md, run as they stand there.</summary>
public partial class SecondCheckPageTests
{
    private static readonly string Page = File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "Guides", "second-check.md")
    );

    [Fact]
    public void The_second_person_of_the_page_agrees_and_what_is_not_checked_holds()
    {
        using var job = Job(Block("toml step"));
        var ended = RealProgram.Run("", "judge", job.JobFile);
        Assert.Equal("", ended.Errors);
        Assert.Equal(4, ended.ExitCode);
        Assert.Contains(Block("").TrimEnd(), ended.Output);
        Assert.DoesNotContain("Rear axle nut: a second person", ended.Output);
        Assert.Contains("Front brake pads, lining: a second person has still to read it", ended.Output);
    }

    [Theory]
    [InlineData("Ines Tallow")]
    [InlineData("Bram Okelo")]
    public void Who_is_no_second_person_is_told(string name)
    {
        using var job = Job(Block("toml step").Replace("Bram Okello", name));
        var ended = RealProgram.Run("", "judge", job.JobFile);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains($"\"{name}\" is no second person here; right would be", ended.Errors);
        Assert.Contains("Bram Okello", ended.Errors);
    }

    private static JobOnPaper Job(string steps)
    {
        var job = new JobOnPaper();
        File.AppendAllText(job.JobFile, $"\n{steps}");
        var shop = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "shop.toml");
        File.AppendAllText(shop, $"\n{Block("toml shop")}");
        return job;
    }

    private static string Block(string kind) =>
        Blocks().Matches(Page).Single(b => b.Groups[1].Value == kind).Groups[2].Value;

    [GeneratedRegex("^```(.*?)\n(.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Blocks();
}
