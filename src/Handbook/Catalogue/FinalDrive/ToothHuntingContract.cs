using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tooth-hunting</c>.</summary>
internal static class ToothHuntingContract
{
    public static Calculation Calculation { get; } =
        new(
            "tooth-hunting",
            "FinalDrive",
            "How many links each tooth meets.",
            "own derivation, checked by enumeration (docs/handbook/tooth-hunting.md)",
            typeof(ToothHunting),
            [DriveInputs.FrontTeeth, DriveInputs.RearTeeth, DriveInputs.Links],
            [
                new("linksPerFrontTooth", "count", "links that one front tooth meets"),
                new("linksPerRearTooth", "count", "links that one rear tooth meets"),
                new("fullyHunting", "true or false", "whether every tooth meets every link"),
            ],
            given =>
            {
                var met = ToothHunting.From(
                    given.Of(DriveInputs.FrontTeeth),
                    given.Of(DriveInputs.RearTeeth),
                    given.Of(DriveInputs.Links)
                );
                return new Gives()
                    .With("linksPerFrontTooth", met.PerFrontTooth)
                    .With("linksPerRearTooth", met.PerRearTooth)
                    .With("fullyHunting", met.FullyHunting);
            }
        );
}
