namespace Witnessmark.Tests.Languages;

/// <summary>Where a sentence becomes plain English on its way to people, it is not translated: these places are known, and there are no others.</summary>
public class FlatTests
{
    // what is written into entries, kept as data, or decides by the English text
    private static readonly string[] KnownInClient =
    [
        "ArrivalPage.<Open>b__43_0",
        "BenchPage.MoveNext",
        "BenchWords.Readback",
        "FiguresPage.<get_Found>b__8_2",
        "PlanPage.<BuildRenderTree>b__5",
        "PointPage.BuildRenderTree",
        "PointPage.MoveNext",
        "SecondWords.Shown",
        "TimerOffer.Start",
        "VerdictBlock.BuildRenderTree",
    ];

    private static readonly string[] KnownInPaper =
    [
        "DistanceGraph.MoveNext",
        "LogBookContent.Visit",
        "LogBookContent.Write",
        "Plane.MoveNext",
        "PointWords.Shown",
        "RecordTables.<Table>b__2",
        "RoundRuleDrawing.Name",
        "RuleNumbers.Pushed",
        "SeenList.<Said>b__2_0",
    ];

    private static readonly string[] KnownInBench =
    [
        "AmountJudge.Of",
        "CampaignMatch.<Of>b__1",
        "EstimatesTable.Steps",
        "FiguresOfPoints.InSheet",
        "FindingFold.<IntoPlan>b__1",
        "GivenSteps.TakeFigure",
        "GivenSteps.TakePhotograph",
        "JobFindings.Estimate",
        "JobFindings.Photographs",
        "JobFindings.Signature",
        "JobStep.Reading",
        "MeasuredJudge.FromRecord",
        "NotUnderstood..ctor",
        "SecondFold.Shown",
        "WorkCautions.New",
    ];

    [Fact]
    public void No_sentence_becomes_plain_English_on_its_way_to_a_screen() => Same(KnownInClient, "Witnessmark.Client");

    [Fact]
    public void No_sentence_becomes_plain_English_on_its_way_to_a_paper() => Same(KnownInPaper, "Witnessmark.Paper");

    [Fact]
    public void No_sentence_of_the_bench_is_put_together_from_plain_English() =>
        Same(KnownInBench, "Witnessmark.Bench");

    private static void Same(string[] known, string assembly)
    {
        var found = SpokenIn.Flattens(Path.Combine(AppContext.BaseDirectory, $"{assembly}.dll"));
        Assert.True(
            found.ToHashSet().SetEquals(known),
            string.Join(
                '\n',
                found.Except(known).Select(f => $"new: {f}").Concat(known.Except(found).Select(f => $"gone: {f}"))
            )
        );
    }
}
