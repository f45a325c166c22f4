namespace Witnessmark.Handbook.Tests.Catalogue;

public class MeasuringRequestTests
{
    private const string Tool = """{"resolution":"1 mm","permissibleError":"0 mm"}""";

    private static string Judged(string min, string max, string more = "", string u = "1 mm") =>
        $$"""{"value":"25 mm","standardUncertainty":"{{u}}","limit":{"min":"{{min}}","max":"{{max}}"}{{more}}}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            {
                "reading",
                $$"""{"values":["5 mm"],"marks":["5 mm","6 mm"],"instrument":{{Tool}}}""",
                "values: given beside marks"
            },
            { "reading", $$"""{"instrument":{{Tool}}}""", "values: missing" },
            { "reading", $$"""{"values":["5 mm","5 N"],"instrument":{{Tool}}}""", "values.1: \"5 N\"" },
            { "reading", $$"""{"marks":["5 mm","5 N"],"instrument":{{Tool}}}""", "marks.1: \"5 N\"" },
            { "reading", $$"""{"values":["5 N"],"instrument":{{Tool}}}""", "instrument.resolution: \"1 mm\"" },
            {
                "reading",
                """{"values":["5 N"],"instrument":{"resolution":"-1 N","permissibleError":"0 N"}}""",
                "instrument.resolution: -1; allowed: zero or more"
            },
            { "verdict", Judged("30 mm", "20 mm"), "limit: min above max" },
            { "verdict", Judged("20 N", "30 mm"), "limit.min: \"20 N\"" },
            { "verdict", Judged("20 mm", "30 mm", ",\"confidence\":0.5"), "confidence: 0.5; allowed: above 0.5" },
            { "verdict", Judged("20 mm", "30 mm", ",\"confidence\":1"), "confidence: 1; allowed: above 0.5" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told) =>
        Assert.StartsWith(told, CaseFiles.Ask(name, given).Malformed);

    [Fact]
    public void A_limit_of_one_value_is_a_limit() =>
        Assert.Equal(
            "inside",
            (string?)CaseFiles.Ask("verdict", Judged("25 mm", "25 mm", u: "0 mm")).Outputs!["verdict"]
        );

    // NIST SP 811 (2008), B.8: 1 in = 25.4 mm
    [Fact]
    public void An_uncertainty_may_come_in_another_unit()
    {
        var reply = CaseFiles.Ask("verdict", Judged("20 mm", "30 mm", ",\"confidence\":0.975", "0.1 in")).Outputs!;
        Assert.Equal(20 + 1.959964 * 2.54, (double)reply["acceptMin"]!["value"]!, 1e-5);
    }

    [Theory]
    [InlineData("-0 mm")]
    [InlineData("-0.0 mm")]
    [InlineData("-1e-400 mm")]
    public void Minus_nothing_is_nothing(string u) =>
        Assert.Equal("inside", (string?)CaseFiles.Ask("verdict", Judged("20 mm", "30 mm", u: u)).Outputs!["verdict"]);
}
