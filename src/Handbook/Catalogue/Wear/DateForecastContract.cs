using System.Text.Json.Nodes;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>date-forecast</c>.</summary>
internal static class DateForecastContract
{
    private const double MostDays = 4_000_000; // more than any calendar in use holds
    private static readonly Input<double> Day = Take.Number(
        "day",
        "day of the reading, on any count of days",
        -MostDays,
        MostDays
    );
    private static readonly Input<Length> Distance = Take.Quantity<Length>("distance", "what the odometer showed");
    private static readonly Input<OdometerDay[]> Odometer = Take.Objects(
        "odometer",
        "odometer readings, each on a later day than the one before",
        [Day, Distance],
        g => new OdometerDay(g.Of(Day), g.Of(Distance))
    );
    private static readonly Input<Length> Remaining = Take.Quantity<Length>("remaining", "distance still to go");
    private static readonly Input<Length> RemainingDeviation = Take.Quantity<Length>(
        "remainingDeviation",
        "one standard deviation of it"
    );
    private static readonly Input<Length> PerDay = Take.Quantity<Length>("perDay", "distance a day");
    private static readonly Input<Length> Deviation = Take.Positive<Length>(
        "deviation",
        "one standard deviation of it"
    );
    private static readonly Input<UsagePrior> Prior = Take.Object(
            "prior",
            "what is known of the use beside the readings; needed with a single reading",
            [PerDay, Deviation],
            g => new UsagePrior(g.Of(PerDay), g.Of(Deviation))
        )
        .OrNothing();
    private static readonly Input<DistanceScatter> Scatter = Take.Quantity<DistanceScatter>(
            "scatter",
            "scatter of the riding while there are fewer than two intervals"
        )
        .Or(DateForecast.UsualScatter, "60 km/√day");
    private static readonly Input<double[]> ByDays = Take.List(
            Take.Number("byDays", "days from the last reading for which the probability is asked", 0)
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "date-forecast",
            "Wear",
            "On which day a remaining distance will have been ridden.",
            "Brownian motion with drift (from memory)",
            typeof(DateForecast),
            [Odometer, Remaining, RemainingDeviation, Prior, Scatter, ByDays],
            [
                new("perDay", "km", "distance a day, by readings and prior"),
                new("probabilities", "list of 1", "reached by each of byDays, in their order"),
                new("medianDays", "day", "from the last reading; as likely too early as too late"),
                new("day10", "day", "from the last reading; reached by then with a probability of 10 %"),
                new("intervals", "count", "intervals between the readings"),
                new("caution", "text", "why the dates are less sure than they look; left out without a reason"),
            ],
            Foretell
        );

    private static Reply Foretell(Given given)
    {
        var odometer = given.Of(Odometer);
        for (var i = 1; i < odometer.Length; i++)
            if (odometer[i].Day <= odometer[i - 1].Day)
                throw given.Wrong($"odometer.{i}.day", "not after the one before", "days in order, each once");
        var asked = given.Has(ByDays);
        return Reply.To(
            DateForecast.For(
                odometer,
                new(given.Of(Remaining), given.Of(RemainingDeviation)),
                given.Maybe(Prior),
                given.Of(Scatter),
                asked ? given.Of(ByDays) : []
            ),
            outlook => Write(outlook, asked)
        );
    }

    private static Gives Write(DateOutlook outlook, bool asked) =>
        new Gives()
            .With("perDay", outlook.PerDay, "km")
            .With("probabilities", asked ? List(outlook.Probabilities) : null)
            .With("medianDays", outlook.Median, "day")
            .With("day10", outlook.Early, "day")
            .With("intervals", outlook.Intervals)
            .With("caution", outlook.Caution);

    private static JsonArray List(IEnumerable<double> probabilities) =>
        new([.. probabilities.Select(p => (JsonNode)Gives.Quantity(p, "1"))]);
}
