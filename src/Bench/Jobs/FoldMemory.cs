using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// What one fold of a growing job leaves to the next: an entry never changes, so what it says does not either, and a reading that meets the same figure on
/// the same machine is judged the same. Good for one job and one workbench; the fold's answer is the same with it and without.
/// </summary>
public sealed class FoldMemory
{
    private readonly Dictionary<Entry, (Fact? Fact, Sentence? Why)> facts = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Entry, (JudgedBy By, Deed? Deed, Sentence? Why)> deeds = new(
        ReferenceEqualityComparer.Instance
    );

    /// <summary>What an entry says.</summary>
    internal (Fact? Fact, Sentence? Why) Fact(Entry entry)
    {
        if (!facts.TryGetValue(entry, out var known))
            facts[entry] = known = Facts.Of(entry);
        return known;
    }

    /// <summary>What was made of an entry by the same point, figure and machine; else what is made of it now.</summary>
    internal (Deed? Deed, Sentence? Why) Deed(Entry entry, JudgedBy by, Func<(Deed? Deed, Sentence? Why)> make)
    {
        if (deeds.TryGetValue(entry, out var known) && known.By == by)
            return (known.Deed, known.Why);
        var (deed, why) = make();
        deeds[entry] = (by, deed, why);
        return (deed, why);
    }

    /// <summary>All that a verdict rests on beside the entry itself.</summary>
    internal sealed record JudgedBy(Point Point, Figure? Figure, Machine Machine);
}
