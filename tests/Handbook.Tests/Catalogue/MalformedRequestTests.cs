namespace Witnessmark.Handbook.Tests.Catalogue;

public class MalformedRequestTests
{
    private static string Chain(string trials, string more = "") =>
        $$"""{"trials":[{{trials}}],"target":"22 mm","slackUncertainty":"1 mm"{{more}}}""";

    private const string Two = """{"turns":0,"slack":"50 mm"},{"turns":2,"slack":"20 mm"}""";

    public static TheoryData<string, string, string, string> Mistakes =>
        new()
        {
            { "unknown key", "chain-adjustment", Chain(Two, ",\"goal\":\"1 mm\""), "goal: unknown key" },
            {
                "unknown key inside",
                "chain-adjustment",
                Chain("""{"turn":0,"slack":"50 mm"}""" + "," + Two),
                "trials.0.turn: unknown"
            },
            {
                "missing key",
                "chain-adjustment",
                """{"target":"22 mm","slackUncertainty":"1 mm"}""",
                "trials: missing"
            },
            { "missing key inside", "chain-adjustment", Chain(Two + ",{\"turns\":1}"), "trials.2.slack: missing" },
            { "wrong dimension", "chain-adjustment", Chain(Two.Replace("20 mm", "20 N")), "trials.1.slack: \"20 N\"" },
            { "unit missing", "chain-adjustment", Chain(Two.Replace("20 mm", "20")), "the unit is missing" },
            { "no such unit", "chain-adjustment", Chain(Two.Replace("20 mm", "20 ell")), "\"ell\" is not a unit" },
            { "bare number", "chain-adjustment", Chain(Two.Replace("\"20 mm\"", "20")), "trials.1.slack: 20" },
            { "NaN", "chain-adjustment", Chain(Two.Replace("20 mm", "NaN mm")), "does not begin with a number" },
            { "infinite", "chain-adjustment", Chain(Two.Replace("20 mm", "1e999 mm")), "too large" },
            { "infinite in base units", "chain-adjustment", Chain(Two.Replace("20 mm", "1e305 km")), "trials.1.slack" },
            {
                "infinite number",
                "chain-adjustment",
                Chain(Two.Replace("\"turns\":2", "\"turns\":1e999")),
                "trials.1.turns: 1e999"
            },
            { "result overflows", "chain-adjustment", Chain(Two.Replace("50 mm", "1e200 mm")), "overflows" },
            { "negative length", "chain-adjustment", Chain(Two.Replace("20 mm", "-20 mm")), "more than zero" },
            {
                "negative length of any unit",
                "reading",
                """{"values":["-1 mm"],"instrument":{"resolution":"1 mm","permissibleError":"0 mm"}}""",
                "values.0: \"-1 mm\""
            },
            { "duplicate key", "chain-adjustment", Chain(Two, ",\"target\":\"23 mm\""), "target: given twice" },
            { "too short a list", "chain-adjustment", Chain("""{"turns":0,"slack":"50 mm"}"""), "2 or more" },
            { "too long a list", "axle-difference", LongList(11_000), "left: 11000 elements; allowed: at most 10000" },
            {
                "object in place of a list",
                "chain-adjustment",
                """{"trials":{},"target":"22 mm","slackUncertainty":"1 mm"}""",
                "trials: {}"
            },
            { "list in place of the request", "chain-adjustment", "[]", "The request: []" },
            { "count with a fraction", "chain-adjustment", Chain(Two, ",\"flatsPerTurn\":6.5"), "whole number" },
            {
                "text in place of truth",
                "oil-first-fill",
                FirstFill.Replace("true", "\"yes\""),
                "filterReplaced: \"yes\"; allowed: true or false"
            },
            {
                "level above 1",
                "oil-first-fill",
                FirstFill.Replace("0.75", "1.1"),
                "targetLevel: 1.1; allowed: number from 0 to 1"
            },
            {
                "risk of nothing",
                "oil-first-fill",
                FirstFill.Replace("0.01", "0"),
                "overfillRisk: 0; allowed: above 0"
            },
            { "more stays inside than fits", "oil-first-fill", FirstFill.Replace("\"0.1 L\"", "\"4 L\""), "capacity" },
            {
                "as much stays inside as fits",
                "oil-first-fill",
                FirstFill.Replace("\"0.1 L\"", "\"3.4 L\""),
                "capacity: not above what stays inside"
            },
            { "word that is none", "vin", """{"vin":"1","region":"moon"}""", "\"northAmerica\" or \"elsewhere\"" },
            { "very long text", "vin", $$"""{"vin":"{{new string('1', 201)}}"}""", "at most 200" },
            { "half a surrogate pair", "vin", """{"vin":"\ud800"}""", "not valid Unicode" },
            { "day that is none", "tyre-date", """{"code":"3109","on":"2026-02-30"}""", "on: \"2026-02-30\"" },
            { "letters in a date code", "tyre-date", """{"code":"31A9","on":"2026-02-01"}""", "three or four digits" },
            {
                "year in place of a decade",
                "tyre-date",
                """{"code":"317","on":"2026-02-01","decade":1997}""",
                "decade: 1997"
            },
            {
                "decade that the code contradicts",
                "tyre-date",
                """{"code":"3109","on":"2026-02-01","decade":1990}""",
                "1990 beside the year 2009"
            },
            {
                "neither target nor limit",
                "cable-free-play",
                """{"trials":[{"turns":0,"play":"9 mm"},{"turns":1,"play":"6 mm"}],"playUncertainty":"0.3 mm"}""",
                "target: missing"
            },
            {
                "limit upside down",
                "cable-free-play",
                """{"trials":[{"turns":0,"play":"9 mm"},{"turns":1,"play":"6 mm"}],"playUncertainty":"0.3 mm","limit":{"min":"4 mm","max":"2 mm"}}""",
                "limit: min not below max"
            },
            {
                "extension without the wrench's length",
                "torque-setting",
                """{"torque":"60 N·m","extension":"80 mm"}""",
                "wrenchLength: missing beside an extension"
            },
            {
                "angle without an extension",
                "torque-setting",
                """{"torque":"60 N·m","extensionAngle":"80 deg"}""",
                "extensionAngle: given without an extension"
            },
            {
                "extension past the hand",
                "torque-setting",
                """{"torque":"60 N·m","wrenchLength":"80 mm","extension":"80 mm","extensionAngle":"180 deg"}""",
                "reaches back to the hand"
            },
            {
                "pairs that cannot be weighed",
                "axle-nut-shift",
                """{"pairs":[{"before":"26 mm","after":"23 mm"}],"target":"24 mm","priorMean":"0 mm²","priorDeviation":"9 mm²","jobScatter":"0 mm²","readingUncertainty":"0 mm"}""",
                "readingUncertainty: zero"
            },
            {
                "values beside marks",
                "reading",
                """{"values":["1 mm"],"marks":["1 mm","2 mm"],"instrument":{"resolution":"1 mm","permissibleError":"0 mm"}}""",
                "values: given beside marks"
            },
            {
                "three marks",
                "reading",
                """{"marks":["1 mm","2 mm","3 mm"],"instrument":{"resolution":"1 mm","permissibleError":"0 mm"}}""",
                "marks: 3 marks"
            },
            {
                "instrument in another dimension",
                "reading",
                """{"values":["1 mm"],"instrument":{"resolution":"1 N","permissibleError":"0 mm"}}""",
                "instrument.resolution"
            },
            {
                "limit without an end",
                "verdict",
                """{"value":"1 mm","standardUncertainty":"1 mm","limit":{}}""",
                "limit: neither min nor max"
            },
            {
                "confidence of certainty",
                "verdict",
                """{"value":"1 mm","standardUncertainty":"1 mm","limit":{"min":"1 mm"},"confidence":1}""",
                "confidence: 1"
            },
        };

    private const string FirstFill =
        """{"capacity":"3.4 L","filterVolume":"0.2 L","filterReplaced":true,"retained":"0.1 L","retainedDeviation":"0.05 L","capacityDeviation":"0.04 L","betweenMarks":"0.5 L","targetLevel":0.75,"overfillRisk":0.01}""";

    private static string LongList(int count) =>
        $$"""{"left":[{{string.Join(',', Enumerable.Repeat("\"1 mm\"", count))}}],"right":["1 mm"],"readingUncertainty":"1 mm","tolerance":"1 mm"}""";

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(
        string mistake,
        string name,
        string given,
        string told
    )
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.True(reply.Malformed is not null, $"{mistake} was let through");
        Assert.Contains(told, reply.Malformed);
        Assert.Null(reply.Outputs);
    }

    [Fact]
    public void The_requests_that_are_broken_here_are_answered_when_whole()
    {
        Assert.Null(CaseFiles.Ask("chain-adjustment", Chain(Two)).Malformed);
        Assert.Null(CaseFiles.Ask("oil-first-fill", FirstFill).Malformed);
        Assert.Null(CaseFiles.Ask("axle-difference", LongList(10_000)).Malformed);
    }
}
