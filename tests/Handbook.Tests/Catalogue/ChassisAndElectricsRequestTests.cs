namespace Witnessmark.Handbook.Tests.Catalogue;

public class ChassisAndElectricsRequestTests
{
    private const string Sag =
        """{"sprungForce":"900 N","riderForce":"450 N","springRate":"95 N/mm","preload":"8 mm","motionRatio":2.6,"collarPitch":"1.5 mm","targetRiderSag":"36 mm","targetStaticSag":"10 mm","staticMinimum":"5 mm"}""";
    private const string Rate = """{"riderForce":"450 N","staticSag":"39 mm","riderSag":"62.4 mm","motionRatio":2.6}""";
    private const string Fork =
        """{"stanchionOutside":"43 mm","stanchionInside":"38 mm","oilLevel":"120 mm","springVolume":"25 mL","travel":"130 mm","position":"80 mm","exponent":1.3,"springRate":"8.5 N/mm","preload":"15 mm","atmosphere":"100 kPa"}""";
    private const string Steering = """{"wheelRadius":"300 mm","rake":"25 deg","offset":"35 mm"}""";
    private const string Battery = """{"voltage":"12.5 V","restedFor":"5 min","meterError":"0.1 V"}""";
    private const string Charging =
        """{"output":[{"engineSpeed":"1200 1/min","current":"14 A"},{"engineSpeed":"5000 1/min","current":"33 A"}],"loads":[{"name":"lamps","power":"84 W","dutyCycle":0.5}],"systemVoltage":"14 V","idleSpeed":"1300 1/min"}""";
    private const string Drop =
        """{"atSource":"12.4 V","atLoad":"12.1 V","meterUncertainty":"0.02 V","current":"5 A","limit":{"max":"0.5 V"},"confidence":0.95}""";
    private const string Beam =
        """{"distance":"10 m","lampHeight":"800 mm","cutoffHeight":"680 mm","limit":{"min":"0.5 %","max":"2 %"}}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            { "suspension-sag", Sag.Replace("900 N", "0 N"), "sprungForce: \"0 N\"" },
            { "suspension-sag", Sag.Replace("450 N", "0 N"), "riderForce: \"0 N\"" },
            { "suspension-sag", Sag.Replace("95 N/mm", "0 N/mm"), "springRate: \"0 N/mm\"" },
            { "suspension-sag", Sag.Replace("95 N/mm", "95 N"), "springRate: \"95 N\"" },
            { "suspension-sag", Sag.Replace("8 mm", "-8 mm"), "preload: \"-8 mm\"" },
            { "suspension-sag", Sag.Replace("2.6", "0"), "motionRatio: 0; allowed: above 0" },
            { "suspension-sag", Sag.Replace("2.6", "-1"), "motionRatio: -1" },
            { "suspension-sag", Sag.Replace("2.6", "NaN"), "" },
            { "suspension-sag", Sag.Replace("1.5 mm", "0 mm"), "collarPitch: \"0 mm\"" },
            { "suspension-sag", Sag.Replace("10 mm", "36 mm"), "targetStaticSag: not less than targetRiderSag" },
            { "suspension-sag", Sag.Replace("10 mm", "NaN mm"), "targetStaticSag: \"NaN mm\"" },
            { "suspension-sag", Sag.Replace("900 N", "1e308 N"), "overflows" },
            { "suspension-sag", Sag.Replace("\"preload\"", "\"preLoad\""), "preLoad: unknown key" },
            { "spring-rate", Rate.Replace("62.4", "39"), "riderSag: not more than staticSag" },
            { "spring-rate", Rate.Replace("39 mm", "-39 mm"), "staticSag: \"-39 mm\"" },
            { "spring-rate", Rate.Replace("450 N", "45 kg"), "riderForce: \"45 kg\"" },
            { "spring-rate", Rate.Replace("2.6", "0"), "motionRatio: 0" },
            { "fork-air", Fork.Replace("38 mm", "43 mm"), "stanchionInside: not less than stanchionOutside" },
            { "fork-air", Fork.Replace("80 mm", "131 mm"), "position: more than travel; allowed: zero to travel" },
            { "fork-air", Fork.Replace("80 mm", "-1 mm"), "position: \"-1 mm\"" },
            { "fork-air", Fork.Replace("120 mm", "0 mm"), "oilLevel: \"0 mm\"" },
            { "fork-air", Fork.Replace("25 mL", "25 mm"), "springVolume: \"25 mm\"" },
            { "fork-air", Fork.Replace("1.3,", "1.41,"), "exponent: 1.41; allowed: number from 1 to 1.4" },
            { "fork-air", Fork.Replace("1.3,", "0.99,"), "exponent: 0.99" },
            { "fork-air", Fork.Replace("100 kPa", "0 kPa"), "atmosphere: \"0 kPa\"" },
            { "trail", Steering.Replace("25 deg", "90 deg"), "rake: \"90 deg\"; allowed" },
            { "trail", Steering.Replace("25 deg", "-1 deg"), "rake: \"-1 deg\"" },
            { "trail", Steering.Replace("300 mm", "0 mm"), "wheelRadius: \"0 mm\"" },
            { "trail", Steering.Replace("35 mm", "35 deg"), "offset: \"35 deg\"" },
            { "battery-state", Battery.Replace("12.5 V", "-12.5 V"), "voltage: \"-12.5 V\"" },
            { "battery-state", Battery.Replace("12.5 V", "12.5 A"), "voltage: \"12.5 A\"" },
            { "battery-state", Battery.Replace("0.1 V", "-0.1 V"), "meterError: \"-0.1 V\"" },
            { "battery-state", Battery.Replace("5 min", "1 month"), "restedFor: \"1 month\"" },
            { "charging-budget", Charging.Replace("5000", "1200"), "output: two points at one engine speed" },
            { "charging-budget", Charging.Replace("33 A", "-33 A"), "output.1.current: \"-33 A\"" },
            {
                "charging-budget",
                Charging.Replace("0.5", "1.1"),
                "loads.0.dutyCycle: 1.1; allowed: number from 0 to 1"
            },
            { "charging-budget", Charging.Replace("14 V", "0 V"), "systemVoltage: \"0 V\"" },
            { "charging-budget", Charging.Replace("84 W", "84 VA"), "loads.0.power: \"84 VA\"" },
            { "charging-budget", Charging.Replace("\"lamps\"", "7"), "loads.0.name: 7" },
            { "voltage-drop", Drop.Replace("0.02 V", "-0.02 V"), "meterUncertainty: \"-0.02 V\"" },
            { "voltage-drop", Drop.Replace("5 A", "0 A"), "current: \"0 A\"" },
            { "voltage-drop", Drop.Replace("\"max\"", "\"min\""), "limit.min: unknown key" },
            { "voltage-drop", Drop.Replace("0.95", "1"), "confidence: 1; allowed: above 0.5 and below 1" },
            { "voltage-drop", Drop.Replace("0.95", "0.5"), "confidence: 0.5; allowed: above 0.5" },
            { "voltage-drop", Drop.Replace("12.4 V", "-12.4 V"), "atSource: \"-12.4 V\"" },
            { "headlamp-aim", Beam.Replace("0.5 %", "2.1 %"), "limit: min above max; allowed: the ends in order" },
            { "headlamp-aim", Beam.Replace("10 m\"", "0 m\""), "distance: \"0 m\"" },
            { "headlamp-aim", Beam.Replace("680 mm", "-1 mm"), "cutoffHeight: \"-1 mm\"" },
            { "headlamp-aim", Beam.Replace("800 mm", "0 mm"), "lampHeight: \"0 mm\"" },
            { "headlamp-aim", Beam.Replace(",\"max\":\"2 %\"", ""), "limit.max: missing" },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told)
    {
        if (told.Length == 0)
        {
            Assert.ThrowsAny<System.Text.Json.JsonException>(() => CaseFiles.Json(given)); // NaN is not JSON
            return;
        }
        var reply = CaseFiles.Ask(name, given);
        Assert.True(reply.Malformed is not null, $"{given} was let through");
        Assert.Contains(told, reply.Malformed);
        Assert.Null(reply.Outputs);
    }

    public static TheoryData<string, string> Whole =>
        new()
        {
            { "suspension-sag", Sag },
            { "suspension-sag", Sag.Replace("10 mm", "0 mm").Replace("8 mm", "0 mm").Replace("\"5 mm\"", "\"0 mm\"") },
            { "suspension-sag", Sag.Replace("10 mm", "35.9 mm") },
            { "spring-rate", Rate },
            { "spring-rate", Rate.Replace("62.4", "39.1") },
            { "fork-air", Fork },
            { "fork-air", Fork.Replace("80 mm", "0 mm").Replace("8.5 N/mm", "0 N/mm").Replace("15 mm", "0 mm") },
            { "fork-air", Fork.Replace("1.3,", "1,").Replace("25 mL", "0 mL") },
            { "fork-air", Fork.Replace("1.3,", "1.4,").Replace("38 mm", "42.9 mm") },
            // 130 mm is 5.118110236220472 in: the end of the travel, a binary digit beyond it
            { "fork-air", Fork.Replace("80 mm", "5.118110236220473 in") },
            { "trail", Steering },
            { "trail", Steering.Replace("25 deg", "0 deg").Replace("35 mm", "-35 mm") },
            { "battery-state", Battery },
            { "battery-state", """{"voltage":"0 V","restedFor":"3 min"}""" },
            { "charging-budget", Charging },
            { "charging-budget", Charging.Replace("84 W", "0 W").Replace("0.5", "0").Replace("14 A", "0 A") },
            { "voltage-drop", Drop },
            { "voltage-drop", """{"atSource":"0 V","atLoad":"0 V","meterUncertainty":"0 V"}""" },
            { "headlamp-aim", Beam },
            { "headlamp-aim", Beam.Replace("680 mm", "0 mm").Replace("0.5 %", "-0.5 %") },
            { "headlamp-aim", Beam.Replace("0.5 %", "2 %") }, // one inclination only is permitted
        };

    [Theory]
    [MemberData(nameof(Whole))]
    public void A_whole_request_is_answered(string name, string given)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.Null(reply.Malformed);
        Assert.Null(reply.Refusal);
    }

    [Fact]
    public void The_exponent_the_atmosphere_and_the_duty_cycle_have_the_defaults_that_are_described()
    {
        Same("fork-air", Fork.Replace("\"exponent\":1.3,", ""), Fork);
        Same("fork-air", Fork.Replace(",\"atmosphere\":\"100 kPa\"", ""), Fork.Replace("100 kPa", "101.325 kPa"));
        Same("charging-budget", Charging.Replace(",\"dutyCycle\":0.5", ""), Charging.Replace("0.5", "1"));
        Same("voltage-drop", Drop.Replace(",\"confidence\":0.95", ""), Drop);
        Same("battery-state", Battery.Replace(",\"meterError\":\"0.1 V\"", ""), Battery.Replace("0.1 V", "0 V"));
    }

    [Fact]
    public void The_end_of_the_travel_is_the_same_in_any_unit() =>
        Same("fork-air", Fork.Replace("80 mm", "5.118110236220473 in"), Fork.Replace("80 mm", "130 mm"));

    // The ohm has two signs in Unicode and a name on plain keyboards
    [Theory]
    [InlineData("Ω")]
    [InlineData("\u2126")]
    [InlineData("ohm")]
    public void The_ohm_may_be_written_in_three_ways(string unit)
    {
        Assert.Equal("Ω", Witnessmark.Handbook.Quantities.UnitTable.Find(unit)!.Symbol);
        Assert.Equal("mΩ", Witnessmark.Handbook.Quantities.UnitTable.Find("m" + unit)!.Symbol);
    }

    private static void Same(string name, string one, string other) =>
        Assert.Equal(
            CaseFiles.Ask(name, other).ToJson().ToJsonString(),
            CaseFiles.Ask(name, one).ToJson().ToJsonString()
        );
}
