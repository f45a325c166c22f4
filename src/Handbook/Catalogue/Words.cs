using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The words of the contract for what the handbook says in types.</summary>
public static class Words
{
    /// <summary>inside, outside, unproven.</summary>
    public static string Word(this Call call) =>
        call switch
        {
            Call.Inside => "inside",
            Call.Outside => "outside",
            Call.Unproven => "unproven",
            _ => throw new ArgumentOutOfRangeException(nameof(call), call, null),
        };
}
