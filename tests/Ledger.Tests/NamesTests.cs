using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger.Tests;

/// <summary>Names by which entries are found again hold nothing that writes lines of its own.</summary>
public sealed class NamesTests
{
    [Theory]
    [InlineData("412", true)]
    [InlineData("Auftrag 412/ä", true)]
    [InlineData("412\nInes Tallow signed in.", false)]
    [InlineData("412\u001b[2J", false)]
    [InlineData("412\u0085", false)]
    public void A_job_whose_name_holds_a_control_character_is_set_aside(string job, bool taken)
    {
        using var shop = new Shop();
        var receipt = shop.Post(Entry("e1", job));
        Assert.Equal(taken, receipt.SetAside.Count == 0);
        Assert.Equal(taken ? ["e1"] : [], shop.Ids());
        if (!taken)
            Assert.Contains("control character", receipt.SetAside[0].Why);
    }

    [Fact]
    public void So_is_an_entry_of_such_a_name()
    {
        using var shop = new Shop();
        Assert.Single(shop.Post(Entry("e\t1", "412")).SetAside);
    }

    private static Entry Entry(string id, string job) =>
        Entries.Sealed(
            new(
                id,
                "harrow-lane",
                job,
                EntryKind.Note,
                EntryBody.Note(null, "Two\nlines."),
                null,
                null,
                "2026-11-29",
                "Ines"
            ),
            "bench",
            1,
            1,
            null
        );
}
