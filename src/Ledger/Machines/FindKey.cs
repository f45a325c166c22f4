using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Machines;

/// <summary>What is searched: letters and digits of each text in capitals, so that spaces and dashes of a plate are no matter.</summary>
internal static class FindKey
{
    /// <summary>The index holds pieces of three signs: less cannot be found in it.</summary>
    public const int Shortest = 3;

    /// <summary>The texts behind one another; a find never runs from one into the next.</summary>
    public static string Of(IEnumerable<string?> texts) =>
        string.Join('|', texts.OfType<string>().Select(NameKey.Of).Where(k => k.Length > 0));
}
