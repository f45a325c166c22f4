using System.Text.Json;

namespace Witnessmark.Handbook.Tests.Catalogue;

public class BrakeTyreAndWheelRequestTests
{
    private const string Gauge = "\"instrument\":{\"resolution\":\"0.1 mm\",\"permissibleError\":\"0.05 mm\"}";
    private const string Disc =
        $$"""{"thicknesses":["5 mm","5.1 mm"],"minimum":"4.5 mm","runout":"0.1 mm","runoutLimit":"0.3 mm","variationLimit":"0.2 mm",{{Gauge}}}""";
    private const string Tread = $$"""{"depths":["3 mm"],"jurisdiction":"DE",{{Gauge}}}""";
    private const string Pressure = """{"gauge":"250 kPa","at":"20 °C","wantedAt":"60 °C","atmosphere":"100 kPa"}""";
    private const string Wheel =
        """{"initial":{"amount":7,"angle":"160 deg"},"trialMass":"20 g","trialAngle":"0 deg","withTrial":{"amount":5,"angle":"70 deg"},"weights":["5 g"]}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            { "brake-disc", Disc.Replace("\"5 mm\",\"5.1 mm\"", ""), "thicknesses: []" },
            { "brake-disc", Disc.Replace("5.1 mm", "0 mm"), "thicknesses.1: \"0 mm\"" },
            { "brake-disc", Disc.Replace("5.1 mm", "5.1 N"), "thicknesses.1: \"5.1 N\"" },
            { "brake-disc", Disc.Replace("5.1 mm", "NaN mm"), "thicknesses.1" },
            { "brake-disc", Disc.Replace("4.5 mm", "0 mm"), "minimum: \"0 mm\"" },
            {
                "brake-disc",
                Disc.Replace("\"0.1 mm\",\"runoutLimit", "\"-0.1 mm\",\"runoutLimit"),
                "runout: \"-0.1 mm\""
            },
            { "brake-disc", Disc.Replace("0.3 mm", "0 mm"), "runoutLimit: \"0 mm\"" },
            { "brake-disc", Disc.Replace("0.2 mm", "0 mm"), "variationLimit: \"0 mm\"" },
            { "brake-disc", Disc.Replace("0.05 mm", "-0.05 mm"), "instrument.permissibleError: \"-0.05 mm\"" },
            { "brake-disc", Disc.Replace("runout\"", "runOut\""), "runOut: unknown key" },
            { "tread-depth", Tread.Replace("\"3 mm\"", ""), "depths: []" },
            { "tread-depth", Tread.Replace("3 mm", "-3 mm"), "depths.0: \"-3 mm\"" },
            { "tread-depth", Tread.Replace("\"DE\"", "49"), "jurisdiction: 49" },
            { "tread-depth", Tread.Replace("\"DE\"", "\"DE\",\"vehicle\":\"car\""), "\"motorcycle\" or \"moped\"" },
            { "tread-depth", Tread.Replace("\"DE\"", "\"DE\",\"shopMinimum\":\"0 mm\""), "shopMinimum: \"0 mm\"" },
            { "tread-depth", Tread.Replace("resolution", "step"), "instrument.step: unknown key" },
            { "tyre-pressure", Pressure.Replace("250 kPa", "-1 kPa"), "gauge: \"-1 kPa\"" },
            { "tyre-pressure", Pressure.Replace("20 °C", "-273.15 °C"), "at: \"-273.15 °C\"; allowed:" },
            { "tyre-pressure", Pressure.Replace("60 °C", "-460 °F"), "wantedAt: \"-460 °F\"" },
            { "tyre-pressure", Pressure.Replace("60 °C", "60 K"), "wantedAt" },
            { "tyre-pressure", Pressure.Replace("100 kPa", "0 kPa"), "atmosphere: \"0 kPa\"" },
            { "tyre-marking", """{"marking":17}""", "marking: 17" },
            { "tyre-marking", $$"""{"marking":"{{new string('1', 201)}}"}""", "at most 200" },
            { "tyre-marking", """{"marking":"\udc00"}""", "not valid Unicode" },
            { "wheel-balance", Wheel.Replace("\"amount\":7", "\"amount\":-7"), "initial.amount: -7" },
            { "wheel-balance", Wheel.Replace("\"amount\":5", "\"amount\":1e10"), "withTrial.amount: 1e10" },
            { "wheel-balance", Wheel.Replace("\"amount\":5", "\"amount\":\"5 g\""), "withTrial.amount: \"5 g\"" },
            { "wheel-balance", Wheel.Replace("20 g", "0 g"), "trialMass: \"0 g\"" },
            { "wheel-balance", Wheel.Replace("20 g", "1001 kg"), "trialMass: \"1001 kg\"" },
            { "wheel-balance", Wheel.Replace("160 deg", "160 mm"), "initial.angle: \"160 mm\"" },
            { "wheel-balance", Wheel.Replace("\"5 g\"", "\"5 g\",\"0 g\""), "weights.1: \"0 g\"" },
            { "wheel-balance", Box(501), "weights: 501 weights; allowed: at most 500" },
            { "wheel-balance", Wheel.Replace("withTrial", "trial"), "trial: unknown key" },
        };

    private static string Box(int pieces) =>
        Wheel.Replace("\"5 g\"", string.Join(',', Enumerable.Range(1, pieces).Select(i => $"\"{i}.5 g\"")));

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.NotNull(reply.Malformed);
        Assert.Contains(told, reply.Malformed);
        Assert.Null(reply.Outputs);
    }

    [Theory]
    [InlineData("brake-disc", Disc)]
    [InlineData("tread-depth", Tread)]
    [InlineData("tyre-pressure", Pressure)]
    [InlineData("wheel-balance", Wheel)]
    public void The_requests_that_are_broken_here_are_answered_when_whole(string name, string given)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.Null(reply.Malformed);
        Assert.Null(reply.Refusal);
    }

    [Fact]
    public void The_fullest_box_is_searched()
    {
        var reply = CaseFiles.Ask("wheel-balance", Box(500));
        Assert.Equal(0, (double)reply.Outputs!["residual"]!["value"]!);
    }

    [Fact]
    public void What_was_not_asked_is_left_out()
    {
        var wheel = CaseFiles.Ask("wheel-balance", Wheel.Replace(",\"weights\":[\"5 g\"]", "")).Outputs!;
        Assert.Equal(["correction"], wheel.Select(o => o.Key));
        var disc = CaseFiles.Ask("brake-disc", Disc.Replace("\"runout\":\"0.1 mm\",", "")).Outputs!;
        Assert.Equal(["thickness", "variation"], disc["verdicts"]!.AsObject().Select(v => v.Key));
        Assert.Equal(["thickness", "variation"], disc["conformance"]!.AsObject().Select(v => v.Key));
        var size = CaseFiles.Ask("tyre-marking", """{"marking":"120/70-12"}""").Outputs!;
        Assert.Equal(
            ["width", "aspect", "construction", "rimCode", "rimDiameter", "overallDiameter"],
            size.Select(o => o.Key)
        );
        Assert.False(CaseFiles.Ask("vin", """{"vin":"1"}""").Outputs!.ContainsKey("checkDigit"));
    }

    [Fact]
    public void An_empty_box_leaves_the_whole_correction()
    {
        var wheel = CaseFiles.Ask("wheel-balance", Wheel.Replace("\"5 g\"", "")).Outputs!;
        Assert.Empty(wheel["place"]!.AsArray());
        Assert.Equal((double)wheel["correction"]!["mass"]!["value"]!, (double)wheel["residual"]!["value"]!);
        Assert.False(CaseFiles.Ask("wheel-balance", Wheel).Outputs!.ContainsKey("note"));
    }

    [Theory]
    [InlineData("law", "1 mm")]
    [InlineData("shop", "2 mm")]
    public void Whose_minimum_counts_is_told(string from, string shop)
    {
        var given = Tread.Replace("\"DE\"", $"\"DE\",\"shopMinimum\":\"{shop}\"");
        Assert.Equal(from, (string)CaseFiles.Ask("tread-depth", given).Outputs!["minimumFrom"]!);
    }

    [Theory]
    [InlineData("20 g", "0.001 g")]
    [InlineData("20 g", "1000 kg")]
    [InlineData("\"5 g\"", "\"1000 kg\"")]
    public void The_ends_of_what_a_weight_may_be_are_answered(string usual, string end) =>
        Assert.NotNull(CaseFiles.Ask("wheel-balance", Wheel.Replace(usual, end)).Outputs);

    [Fact]
    public void A_trial_that_changed_little_is_noted()
    {
        var faint = Wheel.Replace("\"amount\":5,\"angle\":\"70 deg\"", "\"amount\":7.5,\"angle\":\"165 deg\"");
        Assert.Contains("less than 30 %", (string)CaseFiles.Ask("wheel-balance", faint).Outputs!["note"]!);
    }

    // Every text that JSON can carry is refused, malformed or answered through the contract too
    [Theory]
    [InlineData("vin", "vin")]
    [InlineData("tyre-marking", "marking")]
    public void Whatever_is_sent_is_replied_to(string name, string key)
    {
        foreach (var text in Scrawl.Of(4_000, 2026, "180/55 ZR 17 M/C (73W)", "1G4AH59H45G118341"))
        {
            var reply = CaseFiles.Ask(name, $"{{\"{key}\":{JsonSerializer.Serialize(text)}}}");
            Assert.True(reply.Malformed is not null || reply.Outputs is not null);
            Assert.Equal(text.Length > 200, reply.Malformed is not null);
        }
    }

    [Fact]
    public void Numbers_beyond_all_sense_are_no_crash()
    {
        foreach (var huge in (string[])["1e300 mm", "1e-300 mm", "1e200 in"])
        {
            Assert.NotNull(CaseFiles.Ask("brake-disc", Disc.Replace("5.1 mm", huge)));
            Assert.NotNull(CaseFiles.Ask("brake-disc", Disc.Replace("0.05 mm", huge)));
            Assert.NotNull(CaseFiles.Ask("tread-depth", Tread.Replace("3 mm", huge)));
            Assert.NotNull(CaseFiles.Ask("tread-depth", Tread.Replace("0.05 mm", huge)));
        }
        Assert.Contains("overflows", CaseFiles.Ask("tyre-pressure", Pressure.Replace("60 °C", "1.7e308 °C")).Malformed);
        Assert.NotNull(CaseFiles.Ask("wheel-balance", Wheel.Replace("160 deg", "1e300 deg")).Outputs);
    }
}
