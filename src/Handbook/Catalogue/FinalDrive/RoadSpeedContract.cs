using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>road-speed</c>.</summary>
internal static class RoadSpeedContract
{
    private static readonly Input<Frequency> EngineSpeed = Take.Bounded<Frequency>(
        "engineSpeed",
        "of the crankshaft",
        hertz => hertz is >= 0 and <= 1000,
        "zero or more, at most 60000 1/min"
    );
    private static readonly Input<double> Primary = Take.Number("primaryRatio", "crankshaft to clutch", 0.01, 100);
    private static readonly Input<double> Gear = Take.Number("gearRatio", "clutch to front sprocket", 0.01, 100);
    private static readonly Input<Length> Circumference = Take.Bounded<Length>(
        "circumference",
        "rolling circumference of the rear tyre",
        mm => mm is > 0 and <= 10_000,
        "more than zero, at most 10 m"
    );

    public static Calculation Calculation { get; } =
        new(
            "road-speed",
            "FinalDrive",
            "Road speed from engine speed through the gears.",
            "own derivation (kinematics)",
            typeof(RoadSpeed),
            [EngineSpeed, Primary, Gear, DriveInputs.FrontTeeth, DriveInputs.RearTeeth, Circumference],
            [
                new("finalRatio", "1", "turns of the front sprocket for one of the wheel"),
                new("speed", "km/h", "road speed"),
            ],
            given =>
            {
                var geared = RoadSpeed.From(
                    given.Of(EngineSpeed),
                    given.Of(Primary),
                    given.Of(Gear),
                    given.Of(DriveInputs.FrontTeeth),
                    given.Of(DriveInputs.RearTeeth),
                    given.Of(Circumference)
                );
                return new Gives().With("finalRatio", geared.FinalRatio, "1").With("speed", geared.Speed, "km/h");
            }
        );
}
