using Witnessmark.Bench.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

namespace Witnessmark.Ledger.Tests.Campaigns;

public class WithdrawTests
{
    private static readonly AskedMachine Fell = new("Tarnmoor", "Fell 640", 2024);

    [Fact]
    public void A_withdrawn_campaign_is_not_named_any_more_and_stays_in_the_record()
    {
        using var kept = new Kept();
        Own(kept, "own.toml", "TW-31", "TW-32");
        Own(kept, "own.toml", "TW-32");
        var records = kept.Dump();
        var outcome = kept.Store.Withdraw("tw 31", "the maker called it off", "Ines Tallow", Kept.Noon);
        Assert.Equal(
            new("TW-31", "the maker called it off", "Ines Tallow", "2026-03-02T12:00:00.0000000Z", 1),
            outcome.Done
        );
        Assert.Empty(outcome.StillIn);
        Assert.Equal(["TW-32"], kept.Store.Of(Fell).Select(c => c.Number));
        Assert.Equal(["TW-31"], kept.Store.WithdrawnOf(Fell).Select(c => c.Number));
        Assert.Equal([outcome.Done!], kept.Store.WithdrawnSoFar());
        Assert.Equal(records, kept.Dump());
    }

    [Fact]
    public void A_list_that_names_it_again_brings_it_back_and_it_can_be_withdrawn_again()
    {
        using var kept = new Kept();
        Own(kept, "own.toml", "TW-31");
        kept.Store.Withdraw("TW-31", "called off", "Ines Tallow", Kept.Noon);
        Own(kept, "own.toml", "TW-31");
        Assert.Equal(["TW-31"], kept.Store.Of(Fell).Select(c => c.Number));
        Assert.Empty(kept.Store.WithdrawnOf(Fell));
        Assert.NotNull(kept.Store.Withdraw("TW-31", "called off again", "Bram Okello", Kept.Noon).Done);
        Assert.Empty(kept.Store.Of(Fell));
        Assert.Equal(["called off", "called off again"], kept.Store.WithdrawnSoFar().Select(w => w.Because));
    }

    [Fact]
    public void A_list_that_still_carries_it_is_named()
    {
        using var kept = new Kept();
        Own(kept, "own.toml", "TW-31");
        Own(kept, "other.toml", "TW-40");
        Assert.Equal(
            ["own.toml"],
            kept.Store.Withdraw("TW-31", "called off", "Ines Tallow", Kept.Noon).StillIn.Select(l => l.File)
        );
    }

    [Fact]
    public void The_public_list_is_the_regulators_and_an_unknown_number_is_told_with_those_there_are()
    {
        using var kept = new Kept();
        kept.Import(Row("26X-004"));
        Own(kept, "own.toml", "TW-31", "TW-32");
        kept.Store.Withdraw("TW-32", "called off", "Ines Tallow", Kept.Noon);
        var outcome = kept.Store.Withdraw("26X-004", "called off", "Ines Tallow", Kept.Noon);
        Assert.Equal((null, true), (outcome.Done, outcome.IsPublic));
        outcome = kept.Store.Withdraw("TW-32", "once more", "Ines Tallow", Kept.Noon);
        Assert.Equal((null, false), (outcome.Done, outcome.IsPublic));
        Assert.Equal(["TW-31"], outcome.Standing);
        Assert.Equal(2, kept.Store.Of(Fell).Count);
        Assert.Single(kept.Store.WithdrawnSoFar());
    }

    [Fact]
    public void A_number_that_stands_in_both_lists_is_answered_from_the_public_one_again()
    {
        using var kept = new Kept();
        kept.Import(Row("26X-004"));
        Own(kept, "own.toml", "26X-004");
        kept.Store.Withdraw("26X-004", "the regulator's says it better", "Ines Tallow", Kept.Noon);
        Assert.Equal(CampaignSource.Public, Assert.Single(kept.Store.Of(Fell)).Source);
    }

    [Fact]
    public void A_store_of_an_older_program_takes_it_too()
    {
        using var kept = new Kept();
        Own(kept, "own.toml", "TW-31");
        kept.Sql("DROP TABLE withdrawn; PRAGMA user_version = 1");
        Assert.NotNull(kept.Store.Withdraw("TW-31", "called off", "Ines Tallow", Kept.Noon).Done);
        Assert.Empty(kept.Store.Of(Fell));
    }

    private static void Own(Kept kept, string file, params string[] numbers) =>
        kept.Store.ImportOwn([.. numbers.Select(Campaign)], file, Kept.Noon);

    private static Campaign Campaign(string number) =>
        new(
            CampaignSource.Own,
            number,
            "Tarnmoor",
            "Fell 640",
            2024,
            "Side stand switch",
            new("", "", null, null, null, null, "Fills with water.", "It stops.", "Replace it.", "", null, null, [])
        );
}
