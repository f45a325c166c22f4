using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using Witnessmark.Tests.Photographs;

namespace Witnessmark.Tests.Judge;

/// <summary>Figures, names that vouch and photographs in a job file.</summary>
public sealed partial class GivenAtThePointTests : IDisposable
{
    private const string Vouch = "[[steps]]\npoint = \"axle-alignment\"\nvouch = \"Ines Tallow\"\n";
    private const string PadsRead = "point = \"front-pads\"\nread";
    private readonly List<JobOnPaper> jobs = [];

    public void Dispose() => jobs.ForEach(j => j.Dispose());

    [Fact]
    public void Without_a_name_the_demo_job_is_held_and_with_it_released()
    {
        var held = Job((Vouch, "")).Judged();
        Assert.Equal(4, held.ExitCode);
        Assert.Contains("judged by a common-practice figure, not the maker's", held.Output);
        Assert.Contains(
            "vouched for: Rear axle, left against right: Ines Tallow for max 0.5 mm",
            Job().Judged().Output
        );
    }

    [Fact]
    public void A_figure_of_the_job_judges_where_the_sheet_has_none()
    {
        var without = WithoutPads().Judged();
        Assert.Equal(4, without.ExitCode);
        Assert.Contains("no figure judges it: take it from the manual at the point", without.Output);

        var given = WithoutPads(
            (
                PadsRead,
                """
                point = "front-pads"
                document = { name = "manual", title = "Fell 640 workshop manual", edition = "1, 2024" }
                figure = { min = "1.5 mm", origin = "maker: manual p. 71" }
                read
                """
            )
        );
        var ended = given.Judged();
        Assert.Equal("", ended.Errors);
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains(
            "figure for this job: Front brake pads, lining: min 1.5 mm, maker: Fell 640 workshop manual, 1, 2024, p. 71",
            ended.Output
        );
        // the sheet breaks it over the lines of a narrow column
        Assert.Contains("workshop", Paper(given));
        Assert.Contains(
            "maker, Fell 640 workshop manual, 1, 2024, p. 71; given at the bench by Ines Tallow",
            File.ReadAllText(Path.Combine(given.Out, "log-book-412.json"))
        );
    }

    [Fact]
    public void Common_practice_is_taken_only_when_it_is_named_and_then_wants_a_name()
    {
        (string, string)[] taken = [(PadsRead, "point = \"front-pads\"\nfigure = \"common practice\"\nread")];
        var held = WithoutPads(taken).Judged();
        Assert.Equal(4, held.ExitCode);
        Assert.Contains("Front brake pads, lining: judged by a common-practice figure", held.Output);

        (string, string) vouched = (
            PadsRead,
            "point = \"front-pads\"\nfigure = \"common practice\"\nvouch = \"Bram Okello\"\nread"
        );
        var job = WithoutPads(vouched);
        Assert.Equal(0, job.Judged().ExitCode);
        var paper = Paper(job);
        Assert.Contains("Judgedbyneithermaker,lawnorstandard", paper);
        Assert.Contains("BramOkellovouchesforit.", paper);
        Assert.Contains("InesTallowvouchesforit.", paper);
    }

    [Fact]
    public void A_photograph_stands_on_the_sheet_with_its_hash_and_without_its_place()
    {
        var job = Job(
            (PadsRead, "point = \"front-pads\"\nphotograph = \"pads.jpg\"\nshows = \"both linings\"\nread"),
            ("[[steps]]\nrelease", "[[steps]]\nphotograph = \"pads.jpg\"\nshows = \"as it left\"\n\n[[steps]]\nrelease")
        );
        File.WriteAllBytes(Path.Combine(Path.GetDirectoryName(job.JobFile)!, "pads.jpg"), TinyPicture.WithPlace);
        var ended = job.Judged();
        Assert.Equal("", ended.Errors);
        Assert.Contains("photograph: both linings", ended.Output);
        Assert.Contains(TinyPicture.Sha256, Paper(job));
        using var pdf = PdfDocument.Open(Sheet(job));
        var pictures = pdf.GetPages().SelectMany(p => p.GetImages()).ToList();
        Assert.Equal([(16, 12), (16, 12)], pictures.Select(p => (p.WidthInSamples, p.HeightInSamples)));
        Assert.DoesNotContain("51.5N", File.ReadAllText(Sheet(job), System.Text.Encoding.Latin1));
    }

    [Theory]
    [InlineData("figure = { min = \"2 mm\", origin = \"shop\" }", "the sheet has a figure \"pads.front\"")]
    [InlineData("figure = \"a habit\"", "the text \"a habit\"")]
    [InlineData("vouch = \"Ines Tallow\"", "is not judged by the workshop's figure or by common practice")]
    [InlineData("vouch = \"Ines Talow\"", "nobody in the shop is called \"Ines Talow\"")]
    [InlineData("photograph = \"none.jpg\"\nshows = \"x\"", "there is no file \"none.jpg\"")]
    [InlineData("photograph = \"412.toml\"\nshows = \"x\"", "This is not a JPEG picture")]
    [InlineData("photograph = \"412.toml\"", "\"shows\" is missing")]
    [InlineData("shows = \"x\"", "unknown key \"shows\"")]
    [InlineData("document = { name = \"manual\", title = \"Manual\" }", "\"edition\" is missing")]
    public void A_mistake_in_them_is_named_and_nothing_is_judged(string line, string said)
    {
        var ended = Job((PadsRead, $"point = \"front-pads\"\n{line}\nread")).Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(said, ended.Errors);
        Assert.Equal("", ended.Output);
    }

    [Fact]
    public void At_an_unknown_point_nothing_else_is_told()
    {
        var step = "point = \"front-pad\"\nfigure = { min = \"2 mm\", origin = \"shop\" }\nvouch = \"nobody\"\nread";
        Assert.Contains("1 mistake; nothing was judged.", Job((PadsRead, step)).Judged().Errors);
    }

    // docs/job-files.md
    [Fact]
    public void The_example_of_the_page_is_judged_as_it_stands_there()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "job-files.md"));
        var steps = Given().Match(page).Groups[1].Value;
        var job = WithoutPads(("[[steps]]\nrelease", $"{steps}\n[[steps]]\nrelease"));
        File.WriteAllBytes(Path.Combine(Path.GetDirectoryName(job.JobFile)!, "page-71.jpg"), TinyPicture.Plain);
        var ended = job.Judged();
        Assert.Equal("", ended.Errors);
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains("page 71 of the manual", ended.Output);
    }

    private JobOnPaper Job(params (string, string)[] changes)
    {
        jobs.Add(new JobOnPaper(changes));
        return jobs[^1];
    }

    /// <summary>The same job where the sheet has no figure for the front pads.</summary>
    private JobOnPaper WithoutPads(params (string, string)[] changes)
    {
        var job = Job(changes);
        var sheet = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "sheets", "fell-640.toml");
        File.WriteAllText(sheet, File.ReadAllText(sheet).Replace("[figures.\"pads.front\"]", "[figures.\"own.pads\"]"));
        return job;
    }

    private static string Sheet(JobOnPaper job) => Path.Combine(job.Out, "handover-412.pdf");

    private static string Paper(JobOnPaper job)
    {
        using var pdf = PdfDocument.Open(Sheet(job));
        return string.Concat(pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    [GeneratedRegex("```toml given\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Given();
}
