namespace Witnessmark.Handbook.Tests.Catalogue;

public class FluidRequestTests
{
    private const string Tilt = """{"tilt":"2 deg","stickOffset":"60 mm","marksApart":"22 mm"}""";
    private const string Warmth =
        """{"volume":"3.4 L","betweenMarks":"0.5 L","expansion":"0.0007 1/K","caseExpansion":"2.3e-05 1/K","readAt":"20 °C","meantAt":"90 °C"}""";
    private const string Use =
        """{"added":["0.2 L"],"levelStart":0.7,"levelEnd":0.8,"betweenMarks":"0.6 L","distance":"4000 km","levelDeviation":0.08,"addedDeviation":"0.03 L"}""";
    private const string Viscosity = """{"viscosity40":"32 mm²/s","viscosity100":"5.4 mm²/s","temperature":"80 °C"}""";
    private const string Index = """{"viscosity40":"73.3 mm²/s","viscosity100":"8.86 mm²/s"}""";
    private const string Grade = """{"viscosity100":"14 mm²/s","hths":"3.7 mPa·s"}""";
    private const string Freezing = """{"glycol":"ethylene","volumeFraction":"47.6 %"}""";
    private const string Mix =
        """{"systemVolume":"2 L","fractionNow":"30 %","fractionWanted":"50 %","concentrateFraction":"100 %"}""";
    private const string Brake = """{"grade":"DOT 4","boilingPoint":"240 °C"}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            { "oil-tilt", Tilt.Replace("22 mm", "0 mm"), "marksApart: \"0 mm\"" },
            { "oil-tilt", Tilt.Replace("2 deg", "2 mm"), "tilt: \"2 mm\"" },
            { "oil-tilt", Tilt.Replace("60 mm", "NaN mm"), "does not begin with a number" },
            { "oil-tilt", Tilt.Replace("tilt", "lean"), "lean: unknown key" },
            { "oil-warmth", Warmth.Replace("3.4 L", "-3.4 L"), "volume: \"-3.4 L\"" },
            { "oil-warmth", Warmth.Replace("0.5 L", "0 L"), "betweenMarks: \"0 L\"" },
            { "oil-warmth", Warmth.Replace("0.0007", "-0.0007"), "expansion: \"-0.0007 1/K\"" },
            { "oil-warmth", Warmth.Replace("20 °C", "-274 °C"), "readAt: \"-274 °C\"" },
            { "oil-warmth", Warmth.Replace("2.3e-05 1/K", "2.3e-05 mm"), "caseExpansion" },
            { "oil-consumption", Use.Replace("4000 km", "0 km"), "distance: \"0 km\"" },
            { "oil-consumption", Use.Replace("0.2 L", "-0.2 L"), "added.0: \"-0.2 L\"" },
            { "oil-consumption", Use.Replace("0.08", "-0.08"), "levelDeviation: -0.08" },
            { "oil-consumption", Use.Replace("0.03 L", "-0.03 L"), "addedDeviation: \"-0.03 L\"" },
            { "oil-consumption", Use.Replace("0.6 L", "0 L"), "betweenMarks: \"0 L\"" },
            { "oil-consumption", Use.Replace("[\"0.2 L\"]", "\"0.2 L\""), "added: \"0.2 L\"; allowed: list" },
            { "oil-viscosity", Viscosity.Replace("32 mm²/s", "0 mm²/s"), "viscosity40: \"0 mm²/s\"" },
            { "oil-viscosity", Viscosity.Replace("5.4 mm²/s", "5.4 mPa·s"), "viscosity100: \"5.4 mPa·s\"" },
            { "oil-viscosity", Viscosity.Replace("80 °C", "-300 °C"), "temperature: \"-300 °C\"" },
            { "viscosity-index", Index.Replace("73.3", "-73.3"), "viscosity40: \"-73.3 mm²/s\"" },
            { "viscosity-index", Index.Replace("8.86 mm²/s", "8.86"), "the unit is missing" },
            { "oil-grade", Grade.Replace("14 mm²/s", "14 mPa·s"), "viscosity100: \"14 mPa·s\"" },
            { "oil-grade", Grade.Replace("3.7", "0"), "hths: \"0 mPa·s\"" },
            { "oil-grade", """{"hths":"3.7 mPa·s"}""", "viscosity100: missing" },
            { "coolant-freezing", Freezing.Replace("ethylene", "methanol"), "glycol: \"methanol\"" },
            { "coolant-freezing", Freezing.Replace("47.6 %", "-1 %"), "volumeFraction: \"-1 %\"" },
            { "coolant-freezing", Freezing.Replace("47.6 %", "101 %"), "volumeFraction: \"101 %\"" },
            { "coolant-mix", Mix.Replace("2 L", "0 L"), "systemVolume: \"0 L\"" },
            { "coolant-mix", Mix.Replace("30 %", "-30 %"), "fractionNow: \"-30 %\"" },
            { "coolant-mix", Mix.Replace("50 %", "150 %"), "fractionWanted: \"150 %\"" },
            { "coolant-mix", Mix.Replace("100 %", "100.1 %"), "concentrateFraction: \"100.1 %\"" },
            { "brake-fluid", Brake.Replace("DOT 4", "DOT 6"), "grade: \"DOT 6\"" },
            { "brake-fluid", Brake.Replace("240 °C", "240 K"), "\"K\" is not a unit" },
            { "brake-fluid", Brake.Replace("240 °C", "-280 °C"), "boilingPoint: \"-280 °C\"" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.NotNull(reply.Malformed);
        Assert.Contains(told, reply.Malformed);
    }

    [Fact]
    public void The_requests_that_are_broken_here_are_answered_when_whole()
    {
        foreach (
            var (name, given) in new[]
            {
                ("oil-tilt", Tilt),
                ("oil-warmth", Warmth),
                ("oil-consumption", Use),
                ("oil-viscosity", Viscosity),
                ("viscosity-index", Index),
                ("oil-grade", Grade),
                ("coolant-freezing", Freezing),
                ("coolant-mix", Mix),
                ("brake-fluid", Brake),
            }
        )
        {
            var reply = CaseFiles.Ask(name, given);
            Assert.Null(reply.Malformed);
            Assert.Null(reply.Refusal);
        }
    }

    // Numbers beyond all workshop sense: an answer, a refusal or a complaint, never a crash
    [Theory]
    [InlineData("oil-tilt", """{"tilt":"1e300 rad","stickOffset":"1e300 mm","marksApart":"1e-300 mm"}""")]
    [InlineData("oil-tilt", """{"tilt":"5 deg","stickOffset":"1e300 mm","marksApart":"1e-300 mm"}""")]
    [InlineData(
        "oil-viscosity",
        """{"viscosity40":"1e300 mm²/s","viscosity100":"1e-300 mm²/s","temperature":"80 °C"}"""
    )]
    [InlineData(
        "oil-viscosity",
        """{"viscosity40":"20000000 mm²/s","viscosity100":"0.21 mm²/s","temperature":"-70 °C"}"""
    )]
    [InlineData("viscosity-index", """{"viscosity40":"1e300 mm²/s","viscosity100":"1e200 mm²/s"}""")]
    [InlineData("oil-grade", """{"viscosity100":"1e300 mm²/s"}""")]
    [InlineData("coolant-mix", """{"systemVolume":"1e300 L","fractionNow":"0 %","fractionWanted":"1e-300 %"}""")]
    public void Absurd_numbers_are_replied_to(string name, string given)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.True(reply.Malformed is not null || reply.Outputs is not null);
    }
}
