using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Machines;

/// <summary>What somebody types to find a machine: as one text, whose blanks are no matter, and as words that stand anywhere.</summary>
/// <param name="Whole">All letters and digits.</param>
/// <param name="Words">Those words that the index can find.</param>
/// <param name="Short">Those that are too short for it.</param>
internal sealed record FindText(string Whole, IReadOnlyList<string> Words, IReadOnlyList<string> Short)
{
    /// <summary>Null when there is not enough to look for.</summary>
    public static FindText? Of(string typed)
    {
        var whole = NameKey.Of(typed);
        if (whole.Length < FindKey.Shortest)
            return null;
        var words = typed
            .Split((char[]?)null)
            .Select(NameKey.Of)
            .Where(w => w.Length > 0)
            .Distinct()
            .ToLookup(CanBeFound);
        return new(whole, [.. words[true]], [.. words[false]]);
    }

    /// <summary>Whether the words say more than the whole does.</summary>
    public bool HasWords => Words.Count > 0 && Words.Count + Short.Count > 1;

    private static bool CanBeFound(string word) => word.Length >= FindKey.Shortest;
}
