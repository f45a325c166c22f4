using System.Text.Json;
using Witnessmark.Calc;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Tests.Calc;

public sealed class CalcCommandTests : IDisposable
{
    private const string Torque = """{"torque":"60 N·m","wrenchLength":"400 mm","extension":"80 mm"}""";
    private readonly string folder = Directory.CreateTempSubdirectory("calc").FullName;

    public void Dispose() => Directory.Delete(folder, true);

    private string FileWith(string text)
    {
        var path = Path.Combine(folder, $"{Guid.NewGuid():N}.json");
        File.WriteAllText(path, text);
        return path;
    }

    private static JsonElement Json(string text) => JsonDocument.Parse(text).RootElement;

    [Fact]
    public void Exit_codes_are_those_of_the_contract() =>
        Assert.Equal((0, 1, 2, 3), (ExitCode.Ok, ExitCode.Differs, ExitCode.Malformed, ExitCode.Refused));

    [Fact]
    public void List_names_every_calculation_with_its_line_and_source()
    {
        var ended = RealProgram.Run("", "calc", "list");
        Assert.Equal(ExitCode.Ok, ended.ExitCode);
        Assert.All(
            Calculations.All,
            c =>
                Assert.Matches(
                    $@"(?m)^  {c.Name} +{System.Text.RegularExpressions.Regex.Escape($"{c.Line} [{c.Source}]")}",
                    ended.Output
                )
        );
    }

    [Fact]
    public void Describe_shows_defaults_units_formula_and_validity()
    {
        var ended = RealProgram.Run("", "calc", "describe", "chain-adjustment");
        Assert.Equal(ExitCode.Ok, ended.ExitCode);
        Assert.Contains("flatsPerTurn?", ended.Output);
        Assert.Contains("left out: 6", ended.Output);
        Assert.Contains("trials.slack", ended.Output);
        Assert.Contains("law [mm²/turn]", ended.Output);
        Assert.Contains("\nFormula\n  S² = S₀² − c·n", ended.Output);
        Assert.Contains("\nValid when\n", ended.Output);
    }

    [Fact]
    public void Describe_speaks_json_too()
    {
        var json = Json(RealProgram.Run("", "calc", "describe", "oil-top-up", "--json").Output);
        Assert.Equal("0.01", json.GetProperty("takes")[5].GetProperty("default").GetString());
        Assert.NotEqual("", json.GetProperty("validWhen").GetString());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_request_from_a_file_or_standard_input_is_answered(bool fromFile)
    {
        var ended = RealProgram.Run(
            fromFile ? "" : Torque,
            "calc",
            "torque-setting",
            fromFile ? FileWith(Torque) : "-"
        );
        Assert.Equal((ExitCode.Ok, ""), (ended.ExitCode, ended.Errors));
        Assert.Equal(50, Json(ended.Output).GetProperty("setting").GetProperty("value").GetDouble(), 1e-12);
        Assert.Contains("\"N·m\"", ended.Output);
    }

    [Fact]
    public void A_refusal_has_an_exit_code_of_its_own()
    {
        var ended = RealProgram.Run("""{"code":"237","on":"2026-11-25"}""", "calc", "tyre-date", "-");
        Assert.Equal(ExitCode.Refused, ended.ExitCode);
        Assert.Equal("decadeUnknown", Json(ended.Output).GetProperty("refused").GetString());
        Assert.NotEqual("", Json(ended.Output).GetProperty("because").GetString());
    }

    [Theory]
    [InlineData("torque-setting", """{"torque":"60 mm"}""", "torque")]
    [InlineData("torque-setting", """{"torque":NaN}""", "not JSON, line 1, byte 11")]
    [InlineData("torque-setting", "", "not JSON")]
    [InlineData("torque-sitting", "{}", "no calculation \"torque-sitting\"")]
    [InlineData("vin", """{"vin":"\ud800"}""", "Unicode")]
    public void A_malformed_request_is_told_on_both_outputs(string name, string given, string told)
    {
        var ended = RealProgram.Run(given, "calc", name, "-");
        Assert.Equal(ExitCode.Malformed, ended.ExitCode);
        Assert.Contains(told, ended.Errors);
        Assert.Contains(told, Json(ended.Output).GetProperty("wrong").GetString());
    }

    [Fact]
    public void A_missing_file_is_told_by_name()
    {
        var ended = RealProgram.Run("", "calc", "vin", Path.Combine(folder, "nothing.json"));
        Assert.Equal(ExitCode.Malformed, ended.ExitCode);
        Assert.Contains("nothing.json: there is no such file", ended.Errors);
    }

    [Theory]
    [InlineData("calc", "vin")]
    [InlineData("calc", "check")]
    [InlineData("calc", "describe", "vim")]
    [InlineData("nonsense")]
    public void A_command_line_that_is_not_understood_is_malformed_too(params string[] arguments)
    {
        var ended = RealProgram.Run("", arguments);
        Assert.Equal(ExitCode.Malformed, ended.ExitCode);
        Assert.NotEqual("", ended.Errors);
    }

    private static string Case(string value) =>
        $$$"""
            {
              "calculation": "torque-setting",
              "source": "s",
              "cases": [
                {
                  "name": "straight on",
                  "given": {{{Torque}}},
                  "expect": { "setting": { "value": {{{value}}}, "unit": "N·m", "tolerance": 0.01 } }
                }
              ]
            }
            """;

    [Fact]
    public void Check_prints_what_differs_and_goes_on_past_a_broken_file()
    {
        Assert.Equal(ExitCode.Ok, RealProgram.Run("", "calc", "check", FileWith(Case("50"))).ExitCode);

        var differs = RealProgram.Run("", "calc", "check", FileWith(Case("50")), FileWith($"[{Case("51")}]"));
        Assert.Equal(ExitCode.Differs, differs.ExitCode);
        Assert.Contains("\"straight on\": setting is 50 N·m, expected 51 N·m within 0.01", differs.Output);
        Assert.Contains("2 cases, 1 differ", differs.Output);

        var broken = RealProgram.Run(
            "",
            "calc",
            "check",
            FileWith("{"),
            FileWith("{}"),
            "missing.json",
            FileWith(Case("51"))
        );
        Assert.Equal(ExitCode.Malformed, broken.ExitCode);
        Assert.Contains("not JSON", broken.Errors);
        Assert.Contains("\"calculation\" is missing", broken.Errors);
        Assert.Contains("missing.json: there is no such file", broken.Errors);
        Assert.Contains("1 cases, 1 differ", broken.Output);
    }
}
