using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Catalogue;

public class CheckCasesTests
{
    private const string Given = """ "given": {"vin": "1M8GDM9AXKP042788"} """;

    private static IReadOnlyList<string> Differences(string calculation, string given, string expect) =>
        CheckCases
            .In(
                CaseFiles.Json(
                    $$"""{"calculation":"{{calculation}}","source":"s","cases":[{"name":"n","given":{{given}},"expect":{{expect}}}]}"""
                )
            )
            .Single()
            .Differences();

    private static IReadOnlyList<string> OfTorque(string expect) =>
        Differences("torque-setting", """{"torque":"100 N·m"}""", expect);

    [Theory]
    [InlineData("""{"setting":{"value":100,"unit":"N·m","tolerance":0}}""")]
    [InlineData("""{"setting":{"value":100,"unit":"N·m"}}""")]
    [InlineData("""{"setting":{"value":73.7562,"unit":"lbf·ft","tolerance":0.00005}}""")] // NIST SP 811, B.8
    [InlineData("""{"setting.unit":"N·m"}""")]
    public void A_quantity_within_its_tolerance_passes(string expect) => Assert.Empty(OfTorque(expect));

    [Theory]
    [InlineData("""{"setting":{"value":100.2,"unit":"N·m","tolerance":0.1}}""", "within 0.1")]
    [InlineData("""{"setting":{"value":100.00001,"unit":"N·m"}}""", "within 0")]
    [InlineData("""{"setting":{"value":100,"unit":"lbf·ft","tolerance":1}}""", "73.756")]
    [InlineData("""{"setting":{"value":100,"unit":"mm","tolerance":1}}""", "expected in mm")]
    [InlineData("""{"setting":100}""", "expected 100")]
    [InlineData("""{"worstCase":{"value":1,"unit":"N·m","tolerance":1}}""", "not given")]
    [InlineData("""{"refused":"tooStrong"}""", "not given")]
    [InlineData("""{"factor.0":1}""", "not given")]
    public void Anything_else_differs(string expect, string told) =>
        Assert.Contains(told, Assert.Single(OfTorque(expect)));

    [Fact]
    public void A_path_reaches_into_lists_counted_from_zero()
    {
        const string given = """{"vin":"1M8GDM9AXKP042788"}""";
        Assert.Empty(Differences("vin", given, """{"modelYears.1":2019,"modelYears":[1989,2019],"wellFormed":true}"""));
        Assert.Equal(2, Differences("vin", given, """{"modelYears.2":2019,"modelYears":[2019,1989]}""").Count);
    }

    [Fact]
    public void A_refusal_is_expected_by_its_key()
    {
        const string given = """{"code":"237","on":"2026-11-25"}""";
        Assert.Empty(Differences("tyre-date", given, """{"refused":"decadeUnknown"}"""));
        Assert.Contains("notAWeek", Assert.Single(Differences("tyre-date", given, """{"refused":"notAWeek"}""")));
    }

    [Fact]
    public void A_refusal_that_nobody_expects_differs()
    {
        var differences = Differences(
            "tyre-date",
            """{"code":"237","on":"2026-11-25"}""",
            """{"weekStarts":"1997-06-08"}"""
        );
        Assert.Contains("refused as decadeUnknown", differences[0]);
    }

    [Fact]
    public void A_malformed_request_differs() =>
        Assert.Contains("malformed", Assert.Single(Differences("vin", "{}", """{"wellFormed":true}""")));

    [Theory]
    [InlineData("3", "not an object")]
    [InlineData("""{"source":"s","cases":[]}""", "\"calculation\" is missing")]
    [InlineData("""{"calculation":"vim","source":"s","cases":[]}""", "no calculation \"vim\"")]
    [InlineData("""{"calculation":"vin","source":"s","cases":{}}""", "cases is not a list")]
    [InlineData("""{"calculation":"vin","source":"s","cases":[],"case":1}""", "unknown key \"case\"")]
    [InlineData("""{"calculation":"vin","calculation":"vin","source":"s","cases":[]}""", "given twice")]
    [InlineData(
        """[{"calculation":"vin","source":"s","cases":[{"name":"n"}]}]""",
        "group 0, case 0: \"given\" is missing"
    )]
    [InlineData(
        "{\"calculation\":\"vin\",\"source\":\"s\",\"cases\":[{\"name\":\"n\"," + Given + ",\"expect\":{}}]}",
        "expect is empty"
    )]
    [InlineData(
        "{\"calculation\":\"vin\",\"source\":\"s\",\"cases\":[{\"name\":\"n\","
            + Given
            + ",\"expect\":{\"a\":{\"value\":1,\"unit\":\"ell\"}}}]}",
        "\"ell\" is not a unit"
    )]
    [InlineData(
        "{\"calculation\":\"vin\",\"source\":\"s\",\"cases\":[{\"name\":\"n\","
            + Given
            + ",\"expect\":{\"a\":{\"value\":1,\"unit\":\"mm\",\"tolerance\":-1}}}]}",
        "tolerance"
    )]
    public void A_malformed_file_is_told_where_and_why(string file, string told) =>
        Assert.Contains(told, Assert.Throws<MalformedCases>(() => CheckCases.In(CaseFiles.Json(file))).Message);
}
