using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;

namespace Witnessmark.Tests.Judge;

/// <summary>The example of docs/job-files.md is judged as it stands there.</summary>
public partial class JobFileDocumentTests
{
    [Fact]
    public void The_example_has_no_mistake_and_holds_what_it_left_undone()
    {
        using var job = new JobOnPaper();
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "job-files.md"));
        File.WriteAllText(job.JobFile, Toml().Match(page).Groups[1].Value);
        var ended = RealProgram.Run("", "judge", job.JobFile);
        Assert.Equal("", ended.Errors);
        Assert.Equal(4, ended.ExitCode);
        Assert.Contains("left as it is: Tyres, week of making: the owner brings new tyres", ended.Output);
    }

    [GeneratedRegex("```toml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Toml();
}
