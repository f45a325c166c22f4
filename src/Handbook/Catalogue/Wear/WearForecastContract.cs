using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>wear-forecast</c>.</summary>
internal static class WearForecastContract
{
    private static readonly Input<Length> Distance = Take.Quantity<Length>(
        "distance",
        "distance of the part when read"
    );
    private static readonly Input<Length> Value = Take.Quantity<Length>("value", "thickness or depth read");
    private static readonly Input<WearReading[]> Readings = Take.Objects(
        "readings",
        "what was read, in any order; none: the fleet alone",
        [Distance, Value],
        g => new WearReading(g.Of(Distance), g.Of(Value)),
        0
    );
    private static readonly Input<Length> ReadingDeviation = Take.Positive<Length>(
        "readingDeviation",
        "one standard deviation of a reading"
    );
    private static readonly Input<Length> Start = Take.Quantity<Length>("start", "thickness when new");
    private static readonly Input<Length> Rate = Take.Quantity<Length>("rate", "wear per 1000 km");
    private static readonly Input<Length> StartDeviation = Take.Quantity<Length>(
        "startDeviation",
        "one standard deviation of the start, from part to part"
    );
    private static readonly Input<Length> RateDeviation = Take.Quantity<Length>(
        "rateDeviation",
        "one standard deviation of the rate, from part to part"
    );
    private static readonly Input<FleetWear> Prior = Take.Object(
        "prior",
        "what like parts did",
        [Start, Rate, StartDeviation, RateDeviation],
        g => new FleetWear(g.Of(Start), g.Of(Rate), g.Of(StartDeviation), g.Of(RateDeviation))
    );
    private static readonly Input<Length> Limit = Take.Quantity<Length>("limit", "thickness at which it is worn out");
    private static readonly Input<Length> Now = Take.Quantity<Length>(
        "now",
        "distance of the part now, not before a reading"
    );
    private static readonly Input<Length> NextService = Take.Quantity<Length>(
        "nextService",
        "distance of the part at the next service, not before now"
    );

    public static Calculation Calculation { get; } =
        new(
            "wear-forecast",
            "Wear",
            "How far a wearing part still goes, from its readings and like parts.",
            "normal straight line with a normal prior; Fieller 1954 (from memory)",
            typeof(WearForecast),
            [Readings, ReadingDeviation, Prior, Limit, Now, NextService],
            [
                new("start", "mm", "thickness when new, by readings and fleet"),
                new("rate", "mm", "wear per 1000 km, by readings and fleet"),
                new("remainingMedian", "km", "from now; as likely too long as too short; negative: behind"),
                new("remaining05", "km", "from now; one part in twenty is worn out by then"),
                new("remaining95", "km", "from now; nineteen parts in twenty are worn out by then"),
                new("probabilityBeforeNextService", "1", "that the limit is reached by the next service"),
                new("agrees", "true or false", "whether the readings agree with fleet and straight line (95 %)"),
            ],
            Foretell
        );

    private static Reply Foretell(Given given)
    {
        var (readings, now, next) = (given.Of(Readings), given.Of(Now), given.Of(NextService));
        if (next < now)
            throw given.Wrong("nextService", "before now", "now or later");
        for (var i = 0; i < readings.Length; i++)
            if (readings[i].At > now)
                throw given.Wrong($"readings.{i}.distance", "beyond now", "now or before");
        return Reply.To(
            WearForecast.For(readings, given.Of(ReadingDeviation), given.Of(Prior), new(given.Of(Limit), now, next)),
            Write
        );
    }

    private static Gives Write(WearOutlook outlook)
    {
        var gives = new Gives()
            .With("start", outlook.Start, "mm")
            .With("rate", outlook.Rate, "mm")
            .With("remainingMedian", outlook.Median, "km")
            .With("remaining05", outlook.Earliest, "km")
            .With("remaining95", outlook.Latest, "km")
            .With("probabilityBeforeNextService", outlook.ByNextService, "1");
        return outlook.Agrees is { } agrees ? gives.With("agrees", agrees) : gives;
    }
}
