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

    [Fact]
    public void The_steps_of_the_guide_of_campaigns_are_steps_of_a_job_file()
    {
        using var job = new JobOnPaper();
        var job412 = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "job-files.md"));
        var campaigns = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "campaigns.md"));
        var steps = Step().Matches(campaigns).Select(s => s.Groups[1].Value).ToArray();
        Assert.Equal(2, steps.Length);
        File.WriteAllText(job.JobFile, Toml().Match(job412).Groups[1].Value + string.Concat(steps));
        var ended = RealProgram.Run("", "judge", job.JobFile);
        Assert.Equal("", ended.Errors);
        Assert.Equal(4, ended.ExitCode);
    }

    [GeneratedRegex("```toml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Toml();

    [GeneratedRegex("```toml step\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Step();
}
