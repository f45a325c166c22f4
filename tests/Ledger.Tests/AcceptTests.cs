using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Record;

namespace Witnessmark.Ledger.Tests;

// Source: the rules of taking in, as Acceptance states them; each test is one of them.
public sealed class AcceptTests : IDisposable
{
    private readonly Shop _shop = new();
    private readonly IReadOnlyList<Entry> _chain = Made.Chain("bench", 6);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void A_batch_is_taken_in_and_given_back_whole()
    {
        var receipt = _shop.Post(_chain);
        Assert.Equal((_shop.Ledger.Id, 6), (receipt.Ledger, receipt.UpTo));
        Assert.Empty(receipt.SetAside);
        var page = _shop.Ledger.After(0);
        Assert.Equal(6, page.Head);
        Assert.Equal(_chain.Select(Text), page.Entries.Select(e => Text(e.Entry)));
        Assert.Equal([5L, 6L], _shop.Ledger.After(4).Entries.Select(e => e.Order));
        Assert.Equal(_chain.Select(Text), _shop.Ledger.OfJob("412").Select(Text));
        Assert.Empty(_shop.Ledger.OfJob("413"));
        Assert.Equal([("412", 6)], _shop.Ledger.Jobs().Select(j => (j.Job, j.Entries)));
    }

    [Fact]
    public void The_same_batch_again_changes_nothing()
    {
        _shop.Post(_chain);
        Assert.Equal(6, _shop.Post(_chain).UpTo);
        Assert.Equal(_chain.Select(e => e.Id), _shop.Ids());
        Assert.Empty(_shop.Ledger.SetAside());
    }

    [Fact]
    public void Bytes_that_are_no_text_are_set_aside_whole_and_hold_nothing_up()
    {
        var spoilt = System.Text.Encoding.UTF8.GetBytes(
            Text(_chain[1]).Replace("note", "n?te", StringComparison.Ordinal)
        );
        spoilt[Array.IndexOf(spoilt, (byte)'?')] = 0xC3; // the first half of a letter (RFC 3629, section 3), and the second is missing
        using var json = System.Text.Json.JsonDocument.Parse(spoilt);
        var receipt = _shop.Ledger.Accept(
            new("bench", 1, [EntryJson.Write(_chain[0]), json.RootElement.Clone(), EntryJson.Write(_chain[1])])
        );
        Assert.Equal(2, receipt.UpTo);
        var aside = Assert.Single(_shop.Ledger.SetAside());
        Assert.Equal(spoilt, Convert.FromBase64String(aside.Text.Split(": ")[1]));
    }

    [Fact]
    public void A_reordered_batch_comes_in_in_device_order()
    {
        Assert.Equal(6, _shop.Post(_chain.Reverse()).UpTo);
        Assert.Equal(_chain.Select(e => e.Id), _shop.Ids());
        Assert.Empty(_shop.Ledger.SetAside());
    }

    [Fact]
    public void What_comes_after_a_gap_waits_until_the_gap_is_closed()
    {
        var receipt = _shop.Post(_chain[0], _chain[3], _chain[5]);
        Assert.Equal(1, receipt.UpTo);
        Assert.Equal([("bench-4", 4), ("bench-6", 6)], receipt.SetAside.Select(a => (a.Id!, a.Seq!.Value)));
        Assert.Equal("It waits for number 2 of bench/1.", receipt.SetAside[0].Why);

        receipt = _shop.Post(_chain[1], _chain[2]);
        Assert.Equal(4, receipt.UpTo);
        Assert.Equal([6], receipt.SetAside.Select(a => a.Seq!.Value));

        Assert.Equal(6, _shop.Post(_chain[4]).UpTo);
        Assert.Equal(_chain.Select(e => e.Id), _shop.Ids());
        Assert.Empty(_shop.Ledger.SetAside());
    }

    [Fact]
    public void Another_entry_with_a_held_number_is_set_aside()
    {
        _shop.Post(_chain);
        var other = Entries.Sealed(Made.Draft("other"), "bench", 1, 3, _chain[1].Hash);
        var aside = Assert.Single(_shop.Post(other).SetAside);
        Assert.Equal("Its number 3 is held by another entry, bench-3.", aside.Why);
        Assert.Equal(_chain.Select(e => e.Id), _shop.Ids());
        Assert.Equal(Text(other), Canonical(Assert.Single(_shop.Ledger.SetAside()).Text));
    }

    [Fact]
    public void Another_entry_with_a_held_id_is_set_aside()
    {
        _shop.Post(_chain[0]);
        var other = Entries.Sealed(Made.Draft("bench-1"), "bench", 1, 2, _chain[0].Hash);
        var aside = Assert.Single(_shop.Post(other).SetAside);
        Assert.Equal("Its id is that of another entry, number 1 of bench/1.", aside.Why);
        Assert.Equal(["bench-1"], _shop.Ids());
    }

    [Fact]
    public void A_wrong_hash_is_set_aside_and_blocks_nothing()
    {
        var receipt = _shop.Post(_chain.Select(e => e.Seq == 3 ? e with { By = "Tom" } : e));
        Assert.Equal(6, receipt.UpTo);
        Assert.Equal("bench-3", Assert.Single(receipt.SetAside).Id);
        Assert.Equal(["bench-1", "bench-2", "bench-4", "bench-5", "bench-6"], _shop.Ids());
        Assert.Empty(_shop.Check().Faults);
    }

    [Fact]
    public void The_right_entry_still_comes_in_after_its_damaged_copy()
    {
        _shop.Post(_chain.Select(e => e.Seq == 3 ? e with { By = "Tom" } : e));
        Assert.Empty(_shop.Post(_chain[2]).SetAside);
        Assert.Equal(_chain.Select(e => e.Id).Order(), _shop.Ids().Order());
        Assert.Single(_shop.Ledger.SetAside());
        Assert.Empty(_shop.Check().Faults);
    }

    [Theory]
    [InlineData("7")]
    [InlineData("""{"id":"x"}""")]
    [InlineData("""{"id":"x","seq":2,"device":"bench","epoch":1,"body":{"raw":1.5}}""")]
    [InlineData("""{"id":"\ud800"}""")]
    public void What_cannot_be_read_is_kept_as_it_came(string json)
    {
        var receipt = _shop.Post([EntryJson.Write(_chain[0]), Made.Json(json)]);
        Assert.Single(receipt.SetAside);
        Assert.Equal(json, Assert.Single(_shop.Ledger.SetAside()).Text);
        Assert.Equal(["bench-1"], _shop.Ids());
        Assert.Single(_shop.Post([Made.Json(json)]).SetAside);
        Assert.Single(_shop.Ledger.SetAside());
    }

    [Fact]
    public void An_entry_bound_to_something_else_is_set_aside_and_those_after_it_come_in()
    {
        var strange = Entries.Sealed(Made.Draft("strange"), "bench", 1, 3, new string('0', 64));
        var next = Entries.Sealed(Made.Draft("next"), "bench", 1, 4, strange.Hash);
        var receipt = _shop.Post(_chain[0], _chain[1], strange, next);
        Assert.Equal(4, receipt.UpTo);
        Assert.Equal("It is bound to a number 2 that the shop does not hold.", Assert.Single(receipt.SetAside).Why);
        Assert.Equal(["bench-1", "bench-2", "next"], _shop.Ids());
    }

    [Fact]
    public void What_an_entry_says_about_the_job_is_never_a_reason()
    {
        var draft = Made.Draft("odd", body: Made.Json("{}")) with
        {
            Kind = "zebra",
            At = "yesterday",
            Strikes = "nothing",
        };
        Assert.Empty(_shop.Post(Entries.Sealed(draft, "bench", 1, 1, null)).SetAside);
        Assert.Equal(["odd"], _shop.Ids());
    }

    [Fact]
    public void A_new_epoch_starts_again_at_one()
    {
        _shop.Post(_chain);
        var again = Entries.Sealed(Made.Draft("again"), "bench", 2, 1, null);
        var receipt = _shop.Ledger.Accept(new("bench", 2, [EntryJson.Write(again)]));
        Assert.Equal((1, 0), (receipt.UpTo, receipt.SetAside.Count));
    }

    [Fact]
    public void A_page_ends_at_a_thousand()
    {
        for (var i = 0; i < 1001; i += 143)
            _shop.Post(_long.Skip(i).Take(143));
        var page = _shop.Ledger.After(0);
        Assert.Equal((1001, 1000), (page.Head, page.Entries.Count));
        Assert.Equal(1001, Assert.Single(_shop.Ledger.After(1000).Entries).Order);
    }

    private static readonly IReadOnlyList<Entry> _long = Made.Chain("bench", 1001);

    private static string Text(Entry entry) => CanonicalJson.Of(EntryJson.Write(entry));

    private static string Canonical(string json) => CanonicalJson.Of(Made.Json(json));
}
