using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Tests.Times;

public class ObservedTimesTests
{
    private static readonly Bench.Book.BenchBook Book = DemoFiles.Bench.Book;
    private readonly List<Entry> entries = [];

    [Fact]
    public void A_point_takes_from_the_entry_before_it_to_its_mark()
    {
        At("09:00", EntryKind.Arrival, null);
        At("09:03", EntryKind.Reading, "chain-slack");
        At("09:07", EntryKind.Correction, "chain-slack");
        At("09:08", EntryKind.Mark, "chain-slack");
        At("09:13", EntryKind.Mark, "keys");
        Assert.Equal(["chain-slack Ines Tallow 8", "keys Ines Tallow 5"], Told());
    }

    [Fact]
    public void The_first_entry_of_a_device_has_no_beginning_and_its_point_no_time()
    {
        At("09:03", EntryKind.Reading, "chain-slack");
        At("09:08", EntryKind.Mark, "chain-slack");
        At("09:10", EntryKind.Reading, "chain-slack", device: "phone");
        Assert.Equal(["chain-slack Ines Tallow 5"], Told());
        entries.Clear();
        At("09:03", EntryKind.Mark, "chain-slack");
        Assert.Empty(Told());
    }

    [Fact]
    public void Work_that_goes_to_and_fro_is_added_up_and_a_second_mark_says_nothing()
    {
        At("09:00", EntryKind.Arrival, null);
        At("09:02", EntryKind.Reading, "chain-slack");
        At("09:05", EntryKind.Reading, "axle-alignment");
        At("09:06", EntryKind.Mark, "chain-slack");
        At("09:10", EntryKind.Mark, "axle-alignment");
        At("09:30", EntryKind.Reading, "chain-slack");
        At("09:31", EntryKind.Mark, "chain-slack");
        Assert.Equal(["chain-slack Ines Tallow 3", "axle-alignment Ines Tallow 7"], Told());
    }

    [Theory]
    [InlineData("13:00", true)]
    [InlineData("13:01", false)] // more than four hours
    [InlineData("08:59", false)] // the clock went back
    [InlineData("09:00", false)] // it stood still
    public void A_gap_that_cannot_be_work_leaves_the_point_without_a_time(string marked, bool told)
    {
        At("09:00", EntryKind.Arrival, null);
        At(marked, EntryKind.Mark, "keys");
        Assert.Equal(told, Told().Length == 1);
    }

    [Fact]
    public void A_part_is_not_the_whole()
    {
        At("09:00", EntryKind.Arrival, null);
        At("15:00", EntryKind.Reading, "chain-slack");
        At("15:05", EntryKind.Mark, "chain-slack");
        Assert.Empty(Told());
    }

    [Fact]
    public void Another_persons_entry_is_no_beginning()
    {
        At("09:00", EntryKind.Arrival, null, by: "Bram Okello");
        At("09:05", EntryKind.Mark, "keys");
        Assert.Empty(Told());
    }

    /// <summary>Book: the drain plug waits 10 min, the first fill comes after it and takes 4 min. 16 min between them: a wait of 12.</summary>
    [Fact]
    public void What_exceeds_the_hands_after_a_point_that_waits_is_its_wait()
    {
        Assert.Equal(TimeSpan.FromMinutes(4), Book.Points["oil-first-fill"].Hands);
        At("09:00", EntryKind.Arrival, null);
        At("09:06", EntryKind.Mark, "drain-plug");
        At("09:22", EntryKind.Mark, "oil-first-fill");
        Assert.Equal(["drain-plug Ines Tallow 6", "drain-plug  12"], Told());
        entries.Clear();
        At("09:00", EntryKind.Arrival, null);
        At("09:06", EntryKind.Mark, "drain-plug");
        At("09:10", EntryKind.Mark, "oil-first-fill");
        Assert.Equal(["drain-plug Ines Tallow 6"], Told());
    }

    [Fact]
    public void What_cannot_be_read_says_nothing()
    {
        At("09:00", EntryKind.Arrival, null);
        At("no time", EntryKind.Reading, "chain-slack");
        At("09:05", EntryKind.Mark, "chain-slack");
        At("09:09", EntryKind.Mark, "no-such-point");
        At("09:11", EntryKind.Mark, "keys");
        Assert.Equal(["keys Ines Tallow 2"], Told());
    }

    [Fact]
    public void What_was_learnt_is_planned_for_whoever_it_is_of()
    {
        var learnt = LearntTimes.From(
            Book,
            [
                .. Enumerable.Repeat(new ObservedTime("keys", "Ines Tallow", 2 * Book.Points["keys"].Hands), 4),
                new("nothing", "x", TimeSpan.FromHours(1)),
                new("keys", null, TimeSpan.FromHours(1)),
                new("drain-plug", null, TimeSpan.FromMinutes(20)),
            ]
        );
        var book = Book.Points["keys"].Hands;
        // by hand: √2 and 2^¾ of the book's, as in the shrinkage's own test
        Assert.Equal(
            (TimeFrom.Technician, 4),
            (learnt.Hands("keys", "Ines Tallow").From, learnt.Hands("keys", "Ines Tallow").Doings)
        );
        Assert.Equal(book.TotalSeconds * Math.Pow(2, 0.75), learnt.Hands("keys", "Ines Tallow").Time.TotalSeconds, 3);
        Assert.Equal((TimeFrom.Shop, book), (learnt.Hands("keys", "Bram Okello").From, learnt.Hands("keys").Book));
        Assert.Equal(book.TotalSeconds * Math.Sqrt(2), learnt.Hands("keys").Time.TotalSeconds, 3);
        Assert.Equal(
            (TimeFrom.Book, 0, TimeSpan.Zero),
            (learnt.Waits("keys").From, learnt.Waits("keys").Doings, learnt.Waits("keys").Time)
        );
        Assert.Equal(TimeFrom.Shop, learnt.Waits("drain-plug").From);
        Assert.InRange(learnt.Waits("drain-plug").Time, TimeSpan.FromMinutes(10.1), TimeSpan.FromMinutes(19.9));
        Assert.Equal(Book.Points["chain-slack"].Hands, learnt.Hands("chain-slack", "Ines Tallow").Time);
        Assert.Throws<ArgumentException>(() => learnt.Hands("no-such-point"));
    }

    private void At(string time, string kind, string? point, string device = "tablet", string by = "Ines Tallow")
    {
        var own = entries.Where(e => e.Device == device).ToArray();
        var draft = new EntryDraft(
            $"{device}-{own.Length + 1}",
            "harrow-lane",
            "412",
            kind,
            point is null ? EntryBody.Note(null, "x") : EntryBody.Mark(point),
            null,
            null,
            $"2026-11-25T{time}:00+00:00",
            by
        );
        entries.Add(Entries.Sealed(draft, device, 1, own.Length + 1, own.LastOrDefault()?.Hash));
    }

    private string[] Told() =>
        [.. ObservedTimes.Of(entries, Book).Select(o => $"{o.Point} {o.By} {o.Took.TotalMinutes:0.##}")];
}
