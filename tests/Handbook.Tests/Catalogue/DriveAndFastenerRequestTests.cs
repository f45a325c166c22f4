namespace Witnessmark.Handbook.Tests.Catalogue;

public class DriveAndFastenerRequestTests
{
    private const string Tool = """{"id":"A","min":"2 N·m","max":"10 N·m","tolerance":"4 %"}""";
    private const string Wear =
        """{"outer":"328.1 mm","inner":"307.9 mm","links":20,"pitch":"15.875 mm","caliperUncertainty":"0.05 mm"}""";
    private const string Travel =
        """{"swingarm":"585 mm","pivotToFrontSprocket":"70 mm","inlineAngle":"3 deg","benchAngle":"8 deg","droopAngle":"10 deg","bumpAngle":"-3 deg","frontTeeth":15,"rearTeeth":45,"benchSlack":"30 mm"}""";
    private const string Road =
        """{"engineSpeed":"5000 1/min","primaryRatio":1.7,"gearRatio":1.2,"frontTeeth":15,"rearTeeth":45,"circumference":"1950 mm"}""";
    private const string Length = """{"frontTeeth":15,"rearTeeth":45,"pitch":"15.875 mm","centreDistance":"585 mm"}""";
    private const string Bolt =
        """{"thread":"M8","propertyClass":"8.8","threadFriction":0.12,"headFriction":0.12,"utilisation":0.9}""";
    private const string Pair = """{"before":"26 mm","after":"23 mm"}""";
    private const string Angle =
        """{"snugTorque":"20 N·m","nutFactor":0.15,"diameter":"10 mm","pitch":"1.25 mm","boltStiffness":"110000 N/mm","jointStiffness":"500000 N/mm","angle":"90 deg"}""";

    private static string Tightened(string pairs, string scatter, string uncertainty) =>
        $$"""{"pairs":[{{pairs}}],"target":"24 mm","priorMean":"100 mm²","priorDeviation":"100 mm²","jobScatter":"{{scatter}}","readingUncertainty":"{{uncertainty}}"}""";

    private static string Adjusted(string min, string max) =>
        $$"""{"trials":[{"turns":0,"slack":"50 mm"},{"turns":2,"slack":"20 mm"}],"limit":{"min":"{{min}}","max":"{{max}}"},"slackUncertainty":"1 mm"}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            { "chain-adjustment", Adjusted("10 mm", "10 mm"), "limit: min not below max" },
            { "chain-adjustment", Adjusted("11 mm", "10 mm"), "limit: min not below max" },
            { "chain-wear", Wear.Replace("307.9", "328.1"), "inner: not less than outer" },
            { "chain-wear", Wear.Replace("15.875", "1.5875"), "pitch: \"1.5875 mm\"; allowed:" },
            { "chain-travel", Travel.Replace("-3 deg", "11 deg"), "bumpAngle: more than droopAngle" },
            { "chain-travel", Travel.Replace("8 deg", "98 deg"), "benchAngle: \"98 deg\"" },
            { "chain-travel", Travel.Replace("15,", "4,"), "frontTeeth: 4; allowed: whole number, 5 or more" },
            { "torque-tool", $$"""{"setting":"6 N·m","tools":[{{Tool}},{{Tool}}]}""", "two tools with one id" },
            { "torque-tool", $$"""{"setting":"0 N·m","tools":[{{Tool}}]}""", "setting: \"0 N·m\"" },
            {
                "torque-tool",
                $$"""{"setting":"6 N·m","tools":[{{Tool.Replace("2 N·m", "12 N·m")}}]}""",
                "tools.0.min: above max"
            },
            { "bolt-preload", Bolt.Replace("M8", "M8x3"), "thread: \"M8x3\"; allowed: M5, M6, M8" },
            { "bolt-preload", Bolt.Replace("\"8.8\"", "\"4.6\""), "propertyClass: \"4.6\"" },
            { "bolt-preload", Bolt.Replace("0.9", "0"), "utilisation: 0; allowed: above 0" },
            { "bolt-preload", Bolt.Replace("0.9", "1.01"), "utilisation: 1.01" },
            { "angle-tightening", Angle.Replace("1.25 mm", "10 mm"), "pitch: not less than the diameter" },
            { "angle-tightening", Angle.Replace("90 deg", "-1 deg"), "angle: \"-1 deg\"" },
            { "tightening-order", "{}", "fasteners: missing" },
            { "tightening-order", """{"fasteners":4,"rows":2}""", "given beside rows or columns" },
            { "tightening-order", """{"rows":2}""", "columns: missing" },
            { "tightening-order", """{"columns":2}""", "rows: missing" },
            { "tightening-order", """{"fasteners":4,"stages":["50 %"]}""", "torque: missing beside stages" },
            {
                "tightening-order",
                """{"fasteners":4,"torque":"24 N·m","stages":["100 %","50 %"]}""",
                "stages: not rising"
            },
            { "tightening-order", """{"fasteners":4,"torque":"24 N·m","stages":["120 %"]}""", "stages.0: \"120 %\"" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.NotNull(reply.Malformed);
        Assert.Contains(told, reply.Malformed);
    }

    public static TheoryData<string, string, string?> Ends =>
        new()
        {
            { "chain-length", Length.Replace("585 mm", "10 m"), null },
            { "chain-length", Length.Replace("585 mm", "10001 mm"), "centreDistance: \"10001 mm\"" },
            { "chain-length", Length.Replace("585 mm", "0 mm"), "centreDistance: \"0 mm\"" },
            { "chain-length", Length.Replace("15.875 mm", "4 mm"), null },
            { "chain-length", Length.Replace("15.875 mm", "3.9 mm"), "pitch: \"3.9 mm\"" },
            { "chain-length", Length.Replace("15.875 mm", "100 mm").Replace("585 mm", "10 m"), null },
            { "chain-length", Length.Replace("15.875 mm", "101 mm").Replace("585 mm", "10 m"), "pitch: \"101 mm\"" },
            { "chain-travel", Travel.Replace("585 mm", "10 m"), null },
            { "chain-travel", Travel.Replace("585 mm", "10001 mm"), "swingarm: \"10001 mm\"" },
            { "chain-travel", Travel.Replace("585 mm", "0 mm"), "swingarm: \"0 mm\"" },
            { "chain-travel", Travel.Replace("70 mm", "0 mm"), null },
            { "chain-travel", Travel.Replace("70 mm", "-1 mm"), "pivotToFrontSprocket: \"-1 mm\"" },
            { "chain-travel", Travel.Replace("70 mm", "10 m"), null },
            { "chain-travel", Travel.Replace("70 mm", "10001 mm"), "pivotToFrontSprocket: \"10001 mm\"" },
            { "chain-travel", Travel.Replace(":\"3 deg\"", ":\"90 deg\""), null },
            { "chain-travel", Travel.Replace(":\"3 deg\"", ":\"-90 deg\""), null },
            { "chain-travel", Travel.Replace(":\"3 deg\"", ":\"-90.1 deg\""), "inlineAngle: \"-90.1 deg\"" },
            { "chain-travel", Travel.Replace("-3 deg", "10 deg"), null },
            { "chain-travel", Travel.Replace("30 mm", "0 mm"), null },
            { "chain-travel", Travel.Replace("30 mm", "-1 mm"), "benchSlack: \"-1 mm\"" },
            { "chain-travel", Travel.Replace("30 mm", "1 m"), null },
            { "chain-travel", Travel.Replace("30 mm", "1001 mm"), "benchSlack: \"1001 mm\"" },
            { "chain-wear", Wear.Replace("328.1 mm", "200 m"), null },
            { "chain-wear", Wear.Replace("328.1 mm", "200001 mm"), "outer: \"200001 mm\"" },
            { "chain-wear", Wear.Replace("307.9 mm", "0 mm"), "inner: \"0 mm\"" },
            {
                "chain-wear",
                Wear.Replace("328.1 mm", "200 m").Replace("307.9 mm", "200 m"),
                "inner: not less than outer"
            },
            { "chain-wear", Wear.Replace("307.9 mm", "200001 mm"), "inner: \"200001 mm\"" },
            {
                "axle-nut-shift",
                Tightened(Pair, "0 mm²", "0 mm"),
                "readingUncertainty: zero beside a jobScatter of zero"
            },
            { "axle-nut-shift", Tightened(Pair, "40 mm²", "0 mm"), null },
            { "axle-nut-shift", Tightened(Pair, "0 mm²", "0.7 mm"), null },
            { "axle-nut-shift", Tightened("", "0 mm²", "0 mm"), null },
            { "road-speed", Road.Replace("5000 1/min", "0 1/min"), null },
            { "road-speed", Road.Replace("5000 1/min", "1000 Hz"), null },
            { "road-speed", Road.Replace("5000 1/min", "1000.1 Hz"), "engineSpeed: \"1000.1 Hz\"" },
            { "road-speed", Road.Replace("1950 mm", "0 mm"), "circumference: \"0 mm\"" },
            { "road-speed", Road.Replace("1950 mm", "10 m"), null },
            { "road-speed", Road.Replace("1950 mm", "10001 mm"), "circumference: \"10001 mm\"" },
            { "angle-tightening", Angle.Replace("20 N·m", "0 N·m"), null },
            { "angle-tightening", Angle.Replace("20 N·m", "-1 N·m"), "snugTorque: \"-1 N·m\"" },
            { "angle-tightening", Angle.Replace("20 N·m", "100000 N·m"), null },
            { "angle-tightening", Angle.Replace("20 N·m", "100001 N·m"), "snugTorque: \"100001 N·m\"" },
            { "angle-tightening", Angle.Replace("10 mm", "0.1 mm").Replace("1.25 mm", "0.05 mm"), null },
            {
                "angle-tightening",
                Angle.Replace("10 mm", "0.09 mm").Replace("1.25 mm", "0.05 mm"),
                "diameter: \"0.09 mm\""
            },
            { "angle-tightening", Angle.Replace("10 mm", "1 m"), null },
            { "angle-tightening", Angle.Replace("10 mm", "1001 mm"), "diameter: \"1001 mm\"" },
            { "angle-tightening", Angle.Replace("110000 N/mm", "0.001 N/mm"), null },
            { "angle-tightening", Angle.Replace("110000 N/mm", "0.0009 N/mm"), "boltStiffness: \"0.0009 N/mm\"" },
            { "angle-tightening", Angle.Replace("110000 N/mm", "1e9 N/mm"), null },
            { "angle-tightening", Angle.Replace("110000 N/mm", "1.1e9 N/mm"), "boltStiffness: \"1.1e9 N/mm\"" },
            { "angle-tightening", Angle.Replace("500000 N/mm", "0.001 N/mm"), null },
            { "angle-tightening", Angle.Replace("500000 N/mm", "0.0009 N/mm"), "jointStiffness: \"0.0009 N/mm\"" },
            { "angle-tightening", Angle.Replace("500000 N/mm", "1e9 N/mm"), null },
            { "angle-tightening", Angle.Replace("500000 N/mm", "1.1e9 N/mm"), "jointStiffness: \"1.1e9 N/mm\"" },
            { "angle-tightening", Angle.Replace("90 deg", "0 deg"), null },
            { "angle-tightening", Angle.Replace("90 deg", "720 deg"), null },
            { "angle-tightening", Angle.Replace("90 deg", "721 deg"), "angle: \"721 deg\"" },
            { "bolt-preload", Bolt.Replace("0.9", "1"), null },
            { "tightening-order", Staged("100000 N·m", "100 %"), null },
            { "tightening-order", Staged("100001 N·m", "100 %"), "torque: \"100001 N·m\"" },
            { "tightening-order", Staged("0 N·m", "100 %"), "torque: \"0 N·m\"" },
            { "tightening-order", Staged("24 N·m", "0 %", "100 %"), "stages.0: \"0 %\"" },
            { "tightening-order", Staged("24 N·m", "50 %", "50 %"), "stages: not rising" },
            { "tightening-order", Staged("24 N·m", Rising(10)), null },
            { "tightening-order", Staged("24 N·m", Rising(11)), "more than ten" },
            { "torque-tool", $$"""{"setting":"10 N·m","tools":[{{Tool.Replace("2 N·m", "10 N·m")}}]}""", null },
        };

    private static string[] Rising(int stages) => [.. Enumerable.Range(1, stages).Select(i => $"{9 * i} %")];

    private static string Staged(string torque, params string[] stages) =>
        $$"""{"fasteners":4,"torque":"{{torque}}","stages":["{{string.Join("\",\"", stages)}}"]}""";

    [Theory]
    [MemberData(nameof(Ends))]
    public void What_may_be_given_ends_where_it_says(string name, string given, string? told)
    {
        var reply = CaseFiles.Ask(name, given);
        if (told is not null)
            Assert.Contains(told, reply.Malformed);
        else
            Assert.Null(reply.Malformed);
    }

    [Fact]
    public void The_requests_that_are_broken_here_are_answered_when_whole()
    {
        Assert.Null(CaseFiles.Ask("chain-wear", Wear).Malformed);
        Assert.Null(CaseFiles.Ask("chain-travel", Travel).Malformed);
        Assert.Null(CaseFiles.Ask("torque-tool", $$"""{"setting":"6 N·m","tools":[{{Tool}}]}""").Malformed);
        Assert.Null(CaseFiles.Ask("bolt-preload", Bolt).Malformed);
        Assert.Null(CaseFiles.Ask("angle-tightening", Angle).Malformed);
    }

    [Theory]
    [InlineData("", 50)]
    [InlineData(",\"figureIncludesPrevailing\":true", 50)]
    [InlineData(",\"figureIncludesPrevailing\":false", 60)]
    public void A_figure_includes_the_prevailing_torque_unless_it_says_otherwise(string includes, double setting)
    {
        var given = $$"""{"torque":"50 N·m","prevailing":"10 N·m"{{includes}}}""";
        Assert.Equal(setting, (double)CaseFiles.Ask("torque-setting", given).Outputs!["setting"]!["value"]!);
    }

    [Fact]
    public void Torque_without_stages_is_one_stage_at_full_torque_and_no_torque_has_no_steps()
    {
        var steps = CaseFiles.Ask("tightening-order", """{"fasteners":4,"torque":"24 N·m"}""").Outputs!["steps"]!;
        Assert.Equal(4, steps.AsArray().Count);
        Assert.Equal(24, (double)steps[3]!["torque"]!["value"]!);
        Assert.Equal(4, (int)steps[3]!["fastener"]!);
        Assert.Null(CaseFiles.Ask("tightening-order", """{"fasteners":4}""").Outputs!["steps"]);
    }
}
