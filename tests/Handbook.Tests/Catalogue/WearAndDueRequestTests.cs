namespace Witnessmark.Handbook.Tests.Catalogue;

public class WearAndDueRequestTests
{
    private const string Wear =
        """{"readings":[{"distance":"5000 km","value":"4.9 mm"}],"readingDeviation":"0.2 mm","prior":{"start":"7 mm","rate":"0.5 mm","startDeviation":"0.2 mm","rateDeviation":"0.15 mm"},"limit":"2 mm","now":"5000 km","nextService":"10000 km"}""";

    private const string Date =
        """{"odometer":[{"day":0,"distance":"0 km"},{"day":10,"distance":"310 km"}],"remaining":"3000 km","remainingDeviation":"0 km","prior":{"perDay":"30 km","deviation":"9 km"},"scatter":"50 km/√day","byDays":[80]}""";

    private const string Due =
        """{"rules":[{"point":"oil","everyDistance":"10000 km","everyMonths":12,"severeUse":1}],"history":[{"point":"oil","date":"2025-11-30","distance":"4000 km"}],"today":"2026-11-25","distance":"4812 km","perDay":"8 km","horizonDays":30,"odometer":[{"date":"2026-01-01","distance":"4100 km"}],"odometerReplaced":[{"date":"2020-01-01","from":"9 km","to":"0 km"}]}""";

    public static TheoryData<string, string, string> Mistakes =>
        new()
        {
            { "wear-forecast", Wear.Replace("\"limit\"", "\"limits\""), "limits: unknown key" },
            { "wear-forecast", Wear.Replace("\"4.9 mm\"", "\"4.9 N\""), "readings.0.value" },
            { "wear-forecast", Wear.Replace("\"4.9 mm\"", "\"NaN mm\""), "readings.0.value" },
            { "wear-forecast", Wear.Replace("\"2 mm\"", "\"-2 mm\""), "limit" },
            {
                "wear-forecast",
                Wear.Replace("\"readingDeviation\":\"0.2 mm\"", "\"readingDeviation\":\"0 mm\""),
                "more than zero"
            },
            { "wear-forecast", Wear.Replace("10000 km", "4999 km"), "nextService: before now; allowed: now or later" },
            {
                "wear-forecast",
                Wear.Replace("\"distance\":\"5000 km\"", "\"distance\":\"5001 km\""),
                "readings.0.distance: beyond now"
            },
            { "wear-forecast", Wear.Replace("\"7 mm\"", "\"1e200 km\""), "overflows" },
            { "date-forecast", Date.Replace("\"scatter\"", "\"spread\""), "spread: unknown key" },
            { "date-forecast", Date.Replace("50 km/√day", "50 km"), "scatter" },
            { "date-forecast", Date.Replace("\"day\":10", "\"day\":0"), "odometer.1.day: not after" },
            { "date-forecast", Date.Replace("[80]", "[-1]"), "byDays.0: -1" },
            { "date-forecast", Date.Replace("\"9 km\"", "\"0 km\""), "prior.deviation" },
            { "date-forecast", Date.Replace("\"3000 km\"", "\"-3000 km\""), "remaining" },
            {
                "date-forecast",
                Date.Replace("\"day\":0", "\"day\":-1e308").Replace("\"day\":10", "\"day\":1e308"),
                "odometer.0.day: -1e308"
            },
            { "service-due", Due.Replace("\"today\"", "\"now\""), "now: unknown key" },
            { "service-due", Due.Replace("\"10000 km\"", "\"0 km\""), "rules.0.everyDistance" },
            { "service-due", Due.Replace("\"everyMonths\":12", "\"everyMonths\":0"), "rules.0.everyMonths" },
            { "service-due", Due.Replace("\"everyMonths\":12", "\"everyMonths\":1201"), "at most 1200" },
            { "service-due", Due.Replace("\"everyMonths\":12", "\"everyMonths\":1.5"), "rules.0.everyMonths" },
            { "service-due", Due.Replace("\"everyDistance\":\"10000 km\",\"everyMonths\":12,", ""), "at least one" },
            { "service-due", Due.Replace("\"severeUse\":1", "\"severeUse\":0"), "severeUse: 0; allowed: above 0" },
            { "service-due", Due.Replace("\"severeUse\":1", "\"severeUse\":1.1"), "severeUse: 1.1" },
            { "service-due", Due.Replace("\"severeUse\":1", "\"severeUse\":0.05"), "less than a month left of 12" },
            {
                "service-due",
                Due.Replace("2025-11-30", "2026-11-26"),
                "history.0.date: 2026-11-26; allowed: not after today"
            },
            { "service-due", Due.Replace("2026-01-01", "2027-01-01"), "odometer.0.date" },
            { "service-due", Due.Replace("2020-01-01", "2027-01-01"), "odometerReplaced.0.date" },
            { "service-due", Due.Replace("2026-11-25", "10000-01-01"), "today" },
            { "service-due", Due.Replace("\"horizonDays\":30", "\"horizonDays\":-1"), "horizonDays" },
            { "service-due", Due.Replace("\"8 km\"", "\"-8 km\""), "perDay" },
            {
                "service-due",
                Due.Replace("\"rules\":[", "\"rules\":[{\"point\":\"oil\",\"firstAt\":\"1 km\"},"),
                "rules.1.point: \"oil\" again"
            },
        };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.True(reply.Malformed is not null, $"let through: {given}");
        Assert.Contains(told, reply.Malformed);
    }

    [Theory]
    [InlineData("wear-forecast", Wear)]
    [InlineData("date-forecast", Date)]
    [InlineData("service-due", Due)]
    public void The_requests_that_are_broken_here_are_answered_when_whole(string name, string given)
    {
        var reply = CaseFiles.Ask(name, given);
        Assert.Null(reply.Malformed);
        Assert.Null(reply.Refusal);
    }

    [Theory]
    [InlineData("2025-11-30", "2026-11-25")]
    [InlineData("2026-01-01", "2026-11-25")]
    [InlineData("2020-01-01", "2026-11-25")]
    public void An_entry_may_be_of_today(string entry, string today) =>
        Assert.NotNull(CaseFiles.Ask("service-due", Due.Replace(entry, today)).Outputs);

    [Fact]
    public void The_next_service_may_be_now() =>
        Assert.NotNull(CaseFiles.Ask("wear-forecast", Wear.Replace("10000 km", "5000 km")).Outputs);

    [Fact]
    public void Only_what_is_asked_for_has_a_probability()
    {
        Assert.Single(CaseFiles.Ask("date-forecast", Date).Outputs!["probabilities"]!.AsArray());
        var silent = CaseFiles.Ask("date-forecast", Date.Replace(",\"byDays\":[80]", "")).Outputs!;
        Assert.False(silent.ContainsKey("probabilities"));
    }
}
