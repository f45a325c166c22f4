using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

// Source: own derivation from the definition of the chain; each test breaks one thing and expects it named.
public class ChainCheckTests
{
    private static readonly IReadOnlyList<Entry> Whole = Made.Chain("bench", 5);

    [Fact]
    public void A_whole_chain_has_no_fault() =>
        Assert.Empty(ChainCheck.Of(Whole.Reverse().Concat(Made.Chain("tablet", 3))));

    [Fact]
    public void One_changed_digit_is_found_and_named()
    {
        var changed = Whole[2] with { Body = Made.Json("""{"text":"note bench-4"}""") };
        var fault = Assert.Single(ChainCheck.Of(Replaced(2, changed)));
        Assert.Equal(ChainFaultKind.Changed, fault.Kind);
        Assert.Equal(
            "Entry bench-3 (number 3 of bench/1, job 412) was changed: its content does not fit its hash.",
            fault.Says
        );
    }

    public static TheoryData<Entry> Changes =>
        [
            Whole[2] with
            {
                Id = "x",
            },
            Whole[2] with
            {
                Shop = "x",
            },
            Whole[2] with
            {
                Job = "413",
            },
            Whole[2] with
            {
                Kind = EntryKind.Release,
            },
            Whole[2] with
            {
                Strikes = "bench-1",
            },
            Whole[2] with
            {
                Covers = new Dictionary<string, int> { ["tablet/1"] = 1 },
            },
            Whole[2] with
            {
                At = "2026-03-02T09:15:01Z",
            },
            Whole[2] with
            {
                By = "Tom",
            },
            Whole[2] with
            {
                DevicePrevious = Whole[0].Hash,
            },
            Whole[2] with
            {
                Hash = Whole[1].Hash,
            },
        ];

    [Theory]
    [MemberData(nameof(Changes), DisableDiscoveryEnumeration = true)]
    public void A_change_of_any_field_is_found(Entry changed) =>
        Assert.Contains(
            ChainCheck.Of(Replaced(2, changed)),
            f => f.Kind == ChainFaultKind.Changed && ReferenceEquals(f.Entry, changed)
        );

    [Fact]
    public void A_changed_entry_with_a_new_hash_breaks_the_link_of_the_next()
    {
        var forged = Whole[2] with { By = "Tom" };
        forged = forged with { Hash = EntryHash.Of(forged) };
        var fault = Assert.Single(ChainCheck.Of(Replaced(2, forged)));
        Assert.Equal((ChainFaultKind.BrokenLink, "bench-4"), (fault.Kind, fault.Entry.Id));
    }

    [Fact]
    public void An_entry_left_out_is_a_gap_before_the_next()
    {
        var fault = Assert.Single(ChainCheck.Of(Whole.Where(e => e.Seq != 3)));
        Assert.Equal((ChainFaultKind.Gap, "bench-4"), (fault.Kind, fault.Entry.Id));
        Assert.Equal("bench-2", Assert.Single(ChainCheck.Of(Whole.Skip(1))).Entry.Id);
    }

    [Fact]
    public void Two_entries_of_one_number_are_both_seen()
    {
        var other = Entries.Sealed(Made.Draft("bench-9"), "bench", 1, 5, Whole[3].Hash);
        var fault = Assert.Single(ChainCheck.Of([.. Whole, other]));
        Assert.Equal((ChainFaultKind.Doubled, "bench-9"), (fault.Kind, fault.Entry.Id));
    }

    [Fact]
    public void A_new_epoch_starts_a_new_chain() =>
        Assert.Empty(ChainCheck.Of([.. Whole, Entries.Sealed(Made.Draft("again"), "bench", 2, 1, null)]));

    [Fact]
    public void The_first_entry_of_a_chain_has_none_before_it()
    {
        Assert.Throws<ArgumentException>(() => Entries.Sealed(Made.Draft("a"), "bench", 1, 1, Whole[0].Hash));
        Assert.Throws<ArgumentException>(() => Entries.Sealed(Made.Draft("a"), "bench", 1, 2, null));
    }

    private static IEnumerable<Entry> Replaced(int place, Entry by) => Whole.Select((e, i) => i == place ? by : e);
}
