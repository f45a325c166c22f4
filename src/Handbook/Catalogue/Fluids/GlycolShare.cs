using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>A share of glycol as the coolant calculations take it.</summary>
internal static class GlycolShare
{
    public static Input<Ratio> Taken(string name, string meaning) =>
        Take.Bounded<Ratio>(name, meaning, share => share is >= 0 and <= 1, "0 % to 100 %");
}
