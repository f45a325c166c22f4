using System.Text.RegularExpressions;
using Witnessmark.Calc;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Tests.Calc;

public partial class OptionsTests
{
    [Theory]
    [InlineData("idle-speed", "--frequency 40Hz --cylinders 4", """{"frequency":"40Hz","cylinders":4}""")]
    [InlineData("idle-speed", "--firingOrder=uneven --strokes 2", """{"firingOrder":"uneven","strokes":2}""")]
    [InlineData("idle-speed", "--cylinders four", """{"cylinders":"four"}""")]
    [InlineData("oil-first-fill", "--filter-replaced", """{"filterReplaced":true}""")]
    [InlineData("oil-first-fill", "--filter-replaced false", """{"filterReplaced":false}""")]
    [InlineData("axle-difference", "--left 1mm --left 2mm", """{"left":["1mm","2mm"]}""")]
    [InlineData("chain-adjustment", "--limit.min 2mm --limit.max 3mm", """{"limit":{"min":"2mm","max":"3mm"}}""")]
    [InlineData("chain-adjustment", "--trials turns=-1,slack=5mm", """{"trials":[{"turns":-1,"slack":"5mm"}]}""")]
    public void Options_make_the_request(string name, string options, string request) =>
        Assert.Equal(request, Request(name, options).ToJsonString());

    [Theory]
    [InlineData("idle-speed", "--cylindres 4", "no option \"cylindres\"; nearest: cylinders")]
    [InlineData("idle-speed", "--strokes 4 --strokes 2", "--strokes: given twice")]
    [InlineData("idle-speed", "--strokes", "--strokes: the value is missing; allowed: 2 or 4")]
    [InlineData("idle-speed", "--frequency 40 Hz", "Hz: an option begins with --")]
    [InlineData("idle-speed", "--frequency.min 40Hz", "nothing lies inside frequency")]
    [InlineData("chain-adjustment", "--trials 5mm", "\"5mm\" is not of the form name=value")]
    [InlineData("chain-adjustment", "--trials slak=5mm", "no option \"slak\"; nearest: slack")]
    public void A_mistake_is_told(string name, string options, string told) =>
        Assert.Contains(told, Assert.Throws<MalformedOption>(() => Request(name, options)).Message);

    [Fact]
    public void The_guide_prints_what_the_program_prints()
    {
        var guide = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "command-line.md"));
        var examples = Example().Matches(guide);
        Assert.Equal(2, examples.Count);
        foreach (Match example in examples)
        {
            var ended = RealProgram.Run("", example.Groups[1].Value.Split(' '));
            Assert.Equal((ExitCode.Ok, example.Groups[2].Value), (ended.ExitCode, ended.Output));
        }
    }

    [Theory]
    [InlineData("idle-speed --cylinders 4", ExitCode.Malformed)]
    [InlineData("idle-sped --cylinders 4", ExitCode.Malformed)]
    [InlineData("tyre-date --code 237 --on 2026-11-25", ExitCode.Refused)]
    [InlineData("tone --samples nothing.wav", ExitCode.Malformed)]
    public void The_exit_code_is_that_of_a_request_in_json(string line, int code) =>
        Assert.Equal(code, RealProgram.Run("", ["calc", .. line.Split(' ')]).ExitCode);

    private static System.Text.Json.Nodes.JsonObject Request(string name, string options) =>
        Options.Request(Calculations.Named(name)!.Takes, options.Split(' '));

    [GeneratedRegex(
        @"^```console\n\$ witnessmark ([^\n]*)\n(.*?)^```",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Example();
}
