using Witnessmark.Handbook.Electrics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>voltage-drop</c>.</summary>
internal static class VoltageDropContract
{
    private static readonly Input<Voltage> AtSource = Take.Quantity<Voltage>(
        "atSource",
        "at the end that feeds, under load"
    );
    private static readonly Input<Voltage> AtLoad = Take.Quantity<Voltage>(
        "atLoad",
        "at the end that is fed, under the same load"
    );
    private static readonly Input<Voltage> MeterUncertainty = Take.Quantity<Voltage>(
        "meterUncertainty",
        "one standard deviation of one reading, 0 allowed"
    );
    private static readonly Input<Current> Through = Take.Positive<Current>("current", "through the path").OrNothing();
    private static readonly Input<Voltage> Max = Take.Quantity<Voltage>("max", "largest permitted drop");
    private static readonly Input<Voltage> LimitGiven = Take.Object(
            "limit",
            "the maker's or the shop's own",
            [Max],
            g => g.Of(Max)
        )
        .OrNothing();
    private static readonly Input<double> Confidence = Take.Number(
            "confidence",
            "probability asked for, above 0.5 and below 1",
            0.5,
            1
        )
        .Or(Measuring.Verdict.UsualConfidence, "0.95");

    public static Calculation Calculation { get; } =
        new(
            "voltage-drop",
            "Electrics",
            "Voltage lost between two places of a circuit under load, the resistance of the path, and whether it is permitted.",
            "Ohm's law; JCGM 100:2008 (GUM) 5.1.2; JCGM 106:2012, 7.2 to 7.4",
            typeof(VoltageDrop),
            [AtSource, AtLoad, MeterUncertainty, Through, LimitGiven, Confidence],
            [
                new("drop", "V", "below zero, within the meter's uncertainty, means none found"),
                new("standardUncertainty", "V", "one standard deviation of the drop"),
                new("resistance", "Ω", "of the path, where the current is given"),
                new("resistanceUncertainty", "Ω", "one standard deviation, the current taken as exact"),
                new("verdict", "inside, outside or unproven", "where a limit is given: what the drop proves"),
                new("conformance", "1", "probability that the limit is kept"),
                new("acceptMax", "V", "largest drop that is inside"),
                new("margin", "V", "distance to the limit, negative outside"),
            ],
            Lose
        );

    private static Reply Lose(Given given)
    {
        var confidence = given.Of(Confidence);
        if (confidence is 0.5 or 1)
            throw given.Wrong(Confidence.Name, confidence is 1 ? "1" : "0.5", "above 0.5 and below 1");
        return Reply.To(
            VoltageDrop.Between(
                given.Of(AtSource),
                given.Of(AtLoad),
                given.Of(MeterUncertainty),
                given.Maybe(Through),
                given.Maybe(LimitGiven),
                confidence
            ),
            Written
        );
    }

    private static Gives Written(LostVoltage lost)
    {
        var gives = new Gives()
            .With("drop", lost.Drop, "V")
            .With("standardUncertainty", lost.StandardUncertainty, "V")
            .With("resistance", lost.Resistance, "Ω")
            .With("resistanceUncertainty", lost.ResistanceUncertainty, "Ω");
        return lost.Judged is not { } judged
            ? gives
            : gives
                .With("verdict", judged.Call.Word())
                .With("conformance", judged.Conformance, "1")
                .With("acceptMax", judged.AcceptMax, "V")
                .With("margin", judged.Margin, "V");
    }
}
