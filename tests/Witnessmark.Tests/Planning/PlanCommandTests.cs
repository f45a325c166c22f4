using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Planning;

public partial class PlanCommandTests
{
    [Fact]
    public void The_plan_of_a_job_that_has_not_begun_says_what_why_with_what_and_when()
    {
        using var job = new JobOnPaper();
        Head(job);
        var ended = RealProgram.Run("", "plan", job.JobFile);
        Assert.Equal(("", 0), (ended.Errors, ended.ExitCode));
        string[] told =
        [
            "  ! Chain slack, lower run\n      Due, every 1000 km by the maker (handbook p. 12): not on record: unknown, treat as due. Too tight breaks bearings, too loose jumps the sprocket.",
            "  1          crush washer, new  (Drain plug)",
            "  0:00  Vehicle identification number",
            "  - rear stand: put back",
            "saved.",
            "The best order found; none is shorter than",
        ];
        Assert.All(told, words => Assert.Contains(words, ended.Output));
    }

    [Fact]
    public void As_json_it_is_an_object_of_points_kit_order_and_totals()
    {
        using var job = new JobOnPaper();
        Head(job);
        using var plan = JsonDocument.Parse(RealProgram.Run("", "plan", job.JobFile, "--json").Output);
        var root = plan.RootElement;
        Assert.Equal(["points", "kit", "order", "totals"], Keys(root));
        Assert.All(
            root.GetProperty("points").EnumerateArray(),
            p => Assert.Equal(["point", "why", "reach", "guards"], Keys(p))
        );
        Assert.All(root.GetProperty("kit").EnumerateArray(), k => Assert.Equal(["item", "quantity", "for"], Keys(k)));
        var order = root.GetProperty("order");
        Assert.Equal(["makespan", "handsOn", "schedule", "proven", "lowerBound"], Keys(order));
        Assert.False(order.GetProperty("proven").GetBoolean()); // more than 25 points
        var steps = order
            .GetProperty("schedule")
            .EnumerateArray()
            .Select(s => s.GetProperty("do").GetString()!)
            .ToList();
        Assert.Equal(
            root.GetProperty("points").EnumerateArray().Select(p => p.GetProperty("point").GetString()!).Order(),
            steps.Where(s => !s.Contains(':')).Order()
        );
        var oil = root.GetProperty("kit")
            .EnumerateArray()
            .Single(k => k.GetProperty("item").GetString() == "oil filter, new");
        Assert.Equal("oil-filter", oil.GetProperty("for")[0].GetString());
    }

    // the whole demo job is done: only what it never had in its plan is left
    [Fact]
    public void What_is_done_is_not_planned_again()
    {
        using var job = new JobOnPaper();
        var ended = RealProgram.Run("", "plan", job.JobFile, "--json");
        using var plan = JsonDocument.Parse(ended.Output);
        var steps = plan
            .RootElement.GetProperty("order")
            .GetProperty("schedule")
            .EnumerateArray()
            .Select(s => s.GetProperty("do").GetString());
        Assert.DoesNotContain("chain-slack", steps);
        Assert.Contains("brake-free", steps);
    }

    [Fact]
    public void Steps_add_and_drop_points()
    {
        using var job = new JobOnPaper();
        Head(
            job,
            """
            [[steps]]
            point = "front-disc"
            add = "It pulsed on the way here."

            [[steps]]
            point = "front-pads"
            drop = "new last week, seen on the bill"
            lead = "Ines Tallow"
            """
        );
        var output = RealProgram.Run("", "plan", job.JobFile).Output;
        Assert.Contains("  ! Front brake discs, thickness\n      It pulsed on the way here.", output);
        Assert.Contains("  - dropped: Front brake pads, lining: new last week, seen on the bill (Ines Tallow)", output);
        Assert.DoesNotContain("  ! Front brake pads", output);
    }

    [Theory]
    [InlineData(
        "[[steps]]\npoint = \"front-pads\"\ndrop = \"new\"\n",
        "somebody's safety hangs on \"front-pads\"; right would be lead = the name of a lead beside it"
    )]
    [InlineData(
        "[[steps]]\npoint = \"front-pads\"\ndrop = \"new\"\nlead = \"Bram Okello\"\n",
        "\"Bram Okello\" is no lead of this shop"
    )]
    [InlineData("[[steps]]\npoint = \"quad-toe\"\nadd = \"why not\"\n", "this machine has no \"quad-toe\"")]
    [InlineData("[[steps]]\npoint = \"front-padz\"\nadd = \"why not\"\n", "\"front-padz\" is no point of this job")]
    public void A_step_that_the_plan_cannot_take_is_told(string step, string said)
    {
        using var job = new JobOnPaper();
        Head(job, step);
        var ended = RealProgram.Run("", "plan", job.JobFile);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(said, ended.Errors);
        Assert.Contains("nothing was planned", ended.Errors);
        Assert.Equal("", ended.Output);
    }

    [Theory]
    [InlineData(
        "promised = \"Friday 27 November, 16:00\"",
        "promised = \"24 November, 16:00\"",
        "\"24 November, 16:00\" lies before the day of the job"
    )]
    [InlineData(
        "purpose = \"handover\"",
        "purpose = \"handover\"\ndistance = \"-1 km\"",
        "\"-1 km\"; right would be zero or more"
    )]
    [InlineData(
        "shop = \"../shop.toml\"",
        "shop = \"../shop.toml\"\nearlier = [\"nowhere.toml\"]",
        "there is no such file"
    )]
    public void A_slip_in_the_head_is_told(string old, string @new, string said)
    {
        using var job = new JobOnPaper((old, @new));
        var ended = RealProgram.Run("", "plan", job.JobFile);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(said, ended.Errors);
    }

    [Fact]
    public void An_earlier_visit_is_answered_by_the_plan()
    {
        using var job = new JobOnPaper();
        var folder = Path.GetDirectoryName(job.JobFile)!;
        File.WriteAllText(
            Path.Combine(folder, "391.toml"),
            HeadOf(job)
                .Replace("\"412\"", "\"391\"")
                .Replace("2026-11-25", "2026-04-22")
                .Replace("promised = \"Friday 27 November, 16:00\"", "")
                + "[[steps]]\npoint = \"distance\"\nread = \"11840 km\"\nmark = true\n\n"
                + "[[steps]]\npoint = \"chain-slack\"\nread = [\"60 mm\", \"41 mm\"]\nmark = true\n\n"
                + "[[steps]]\npoint = \"tyre-dates\"\nleave = \"the owner brings new tyres\"\n"
        );
        Head(job);
        var text = File.ReadAllText(job.JobFile);
        File.WriteAllText(
            job.JobFile,
            text.Replace("[files]", "[files]\nearlier = [\"391.toml\"]")
                .Replace("purpose =", "distance = \"12380 km\"\npurpose =")
        );
        var output = RealProgram.Run("", "plan", job.JobFile).Output;
        Assert.Contains("Left as it was at the last visit, 2026-04-22: the owner brings new tyres.", output);
        // 1000 km after 11840 km is 12840 km; 540 km in 217 days are 2.5 km a day: 185 days left, not soon
        Assert.DoesNotContain("every 1000 km", output);
        Assert.Contains("every 5000 km or 12 months", output);
    }

    [Fact]
    public void The_data_folder_tells_campaigns_and_earlier_visits()
    {
        using var data = new TempFolder();
        Assert.Equal(
            0,
            RealProgram.Run("", "campaigns", "import", Demo("campaigns/bulletins.toml"), "--data", data.Path).ExitCode
        );
        using var job = new JobOnPaper();
        Head(job);
        var output = RealProgram.Run("", "plan", job.JobFile, "--data", data.Path).Output;
        Assert.Contains("Campaign TW-31 (Side stand switch) concerns this machine.", output);
        Assert.Contains("  ! Campaign, the work itself", output);
        Assert.Equal(2, RealProgram.Run("", "plan", job.JobFile, "--data", data.Path + "-not").ExitCode);
    }

    [Fact]
    public void The_example_of_the_page_is_what_the_program_prints()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "plan.md"))
            .ReplaceLineEndings("\n");
        using var job = new JobOnPaper();
        File.WriteAllText(job.JobFile, Toml().Match(page).Groups[1].Value);
        var ended = RealProgram.Run("", "plan", job.JobFile);
        Assert.Equal("", ended.Errors);
        Assert.Equal(Told().Match(page).Groups[1].Value, ended.Output.ReplaceLineEndings("\n"));
    }

    private static string Demo(string file) => Path.Combine(AppContext.BaseDirectory, "demo", file);

    private static string HeadOf(JobOnPaper job) =>
        Steps().Split(File.ReadAllText(job.JobFile).ReplaceLineEndings("\n"))[0];

    private static void Head(JobOnPaper job, string steps = "") => File.WriteAllText(job.JobFile, HeadOf(job) + steps);

    private static IEnumerable<string> Keys(JsonElement json) => json.EnumerateObject().Select(p => p.Name);

    [GeneratedRegex(@"(?=\[\[steps\]\])")]
    private static partial Regex Steps();

    [GeneratedRegex("```toml job\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Toml();

    [GeneratedRegex("```text\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Told();
}
