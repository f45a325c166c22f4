using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The keys that the calculations on the chain drive share.</summary>
internal static class DriveInputs
{
    public static readonly Input<int> FrontTeeth = Take.Count("frontTeeth", "teeth of the front sprocket", 5, 300);
    public static readonly Input<int> RearTeeth = Take.Count("rearTeeth", "teeth of the rear sprocket", 5, 300);
    public static readonly Input<int> Links = Take.Count("links", "links of the chain", 10, 2000);

    // ISO 606 runs from 6.35 mm (04C) to 76.2 mm (48B).
    public static readonly Input<Length> Pitch = Take.Bounded<Length>(
        "pitch",
        "pitch of the chain",
        mm => mm is >= 4 and <= 100,
        "4 to 100 mm"
    );

    public static readonly Input<Length> CentreDistance = Take.Bounded<Length>(
        "centreDistance",
        "distance of the sprocket shafts",
        mm => mm is > 0 and <= 10_000,
        "more than zero, at most 10 m"
    );

    public static Input<Length> Slack(string name, string meaning) =>
        Take.Bounded<Length>(name, meaning, mm => mm is >= 0 and <= 1000, "zero or more, at most 1 m");

    public static Sprockets SprocketsOf(Given given, Input<Length> pitch) =>
        new(given.Of(FrontTeeth), given.Of(RearTeeth), given.Of(pitch));
}
