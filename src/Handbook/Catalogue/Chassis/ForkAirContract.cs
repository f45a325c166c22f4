using Witnessmark.Handbook.Chassis;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>fork-air</c>.</summary>
internal static class ForkAirContract
{
    private static readonly Input<Length> Outside = Take.Positive<Length>(
        "stanchionOutside",
        "outside diameter of the sliding tube"
    );
    private static readonly Input<Length> Inside = Take.Positive<Length>(
        "stanchionInside",
        "inside diameter, less than stanchionOutside"
    );
    private static readonly Input<Length> OilLevel = Take.Positive<Length>(
        "oilLevel",
        "top of the tube down to the oil, compressed, spring out"
    );
    private static readonly Input<Volume> SpringVolume = Take.Quantity<Volume>(
        "springVolume",
        "what spring and spacer displace"
    );
    private static readonly Input<Length> Travel = Take.Positive<Length>("travel", "from topped out to the end");
    private static readonly Input<Length> Position = Take.Quantity<Length>(
        "position",
        "from topped out, not more than travel"
    );
    private static readonly Input<double> Exponent = Take.Number(
            "exponent",
            "1 slow (sag), 1.4 adiabatic",
            ForkAir.Isothermal,
            ForkAir.Adiabatic
        )
        .Or(ForkAir.UsualExponent, "1.3");
    private static readonly Input<Stiffness> Rate = Take.Quantity<Stiffness>("springRate", "of one leg");
    private static readonly Input<Length> Preload = Take.Quantity<Length>("preload", "of one leg, topped out");
    private static readonly Input<Pressure> Atmosphere = Take.Positive<Pressure>("atmosphere", "absolute")
        .Or(ForkAir.StandardAtmosphere, "101.325 kPa");

    public static Calculation Calculation { get; } =
        new(
            "fork-air",
            "Chassis",
            "Force of the trapped air and of the spring in a fork at a place of its travel.",
            "polytropic change of state, checked by integration (docs/handbook/fork-air.md)",
            typeof(ForkAir),
            [Outside, Inside, OilLevel, SpringVolume, Travel, Position, Exponent, Rate, Preload, Atmosphere],
            [
                new("airForce", "N", "of the air in one leg, above the atmosphere"),
                new("springForce", "N", "of the spring in one leg"),
                new("totalForce", "N", "of both legs"),
                new("airRate", "N/mm", "of the air in one leg"),
            ],
            Push
        );

    private static Reply Push(Given given)
    {
        var leg = new ForkLeg(
            given.Of(Outside),
            given.Of(Inside),
            given.Of(OilLevel),
            given.Of(SpringVolume),
            given.Of(Travel)
        );
        if (leg.Inside >= leg.Outside)
            throw given.Wrong(Inside.Name, "not less than stanchionOutside", "less than stanchionOutside");
        return Reply.To(
            ForkAir.At(
                leg,
                Place(given, leg.Travel),
                new(given.Of(Rate), given.Of(Preload)),
                given.Of(Exponent),
                given.Of(Atmosphere)
            ),
            f =>
                new Gives()
                    .With("airForce", f.Air, "N")
                    .With("springForce", f.Spring, "N")
                    .With("totalForce", f.Total, "N")
                    .With("airRate", f.AirRate, "N/mm")
        );
    }

    // The end of the travel written in another unit may lie a binary digit beyond it.
    private const double Rounding = 1e-9;

    private static Length Place(Given given, Length travel)
    {
        var position = given.Of(Position);
        if (position.Millimetres > travel.Millimetres * (1 + Rounding))
            throw given.Wrong(Position.Name, "more than travel", "zero to travel");
        return position < travel ? position : travel;
    }
}
