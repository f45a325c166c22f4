using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

namespace Witnessmark.Ledger.Tests.Campaigns;

public class LookUpTests
{
    [Fact]
    public void Without_any_import_there_is_no_store_and_looking_makes_none()
    {
        using var kept = new Kept();
        Assert.Null(CampaignStore.OpenIfThere(kept.Folder));
        Assert.Empty(Directory.GetFiles(kept.Folder));
    }

    /// <summary>The store's answer against every record judged one by one.</summary>
    [Fact]
    public void It_finds_what_looking_at_every_record_finds()
    {
        using var kept = new Kept();
        using var file = new MemoryStream();
        new InventedRecalls(seed: 7).Write(file, 3000);
        kept.Import(file.ToArray());
        kept.Import(
            Row(),
            Row("A", model: ""),
            Row("B", year: "9999"),
            Row("C", year: "2023"),
            Row("D", model: "FELL 640 R")
        );
        var all = Everything(file.ToArray());
        AskedMachine[] asked =
        [
            new("Tarnmoor", "Fell 640", 2024),
            new("TARN MOOR", "fell-640", 2023),
            new("Tarnmoor", "Fell 640", null),
            .. all.Take(200).Select(c => new AskedMachine(c.Make.ToLowerInvariant(), c.Model, c.Year ?? 2001)),
        ];
        foreach (var machine in asked)
            Assert.Equal(
                CampaignMatches
                    .Of(all, machine)
                    .Select(m =>
                        (m.Campaign.Number, m.Campaign.Year, m.Campaign.Component, m.Concern, m.Campaign.Says.Defect)
                    ),
                CampaignMatches
                    .Of(kept.Store.Of(machine), machine)
                    .Select(m =>
                        (m.Campaign.Number, m.Campaign.Year, m.Campaign.Component, m.Concern, m.Campaign.Says.Defect)
                    )
            );
        Assert.Equal(
            ["26X-004", "A", "B"],
            kept.Store.Of(asked[0]).Select(c => c.Number).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Every_field_comes_back_as_it_went_in()
    {
        using var kept = new Kept();
        var campaign = new Campaign(
            CampaignSource.Own,
            "TW-31",
            "Tarnmoor",
            "Fell 640",
            2024,
            "Switch",
            new(
                "Works",
                "W-1",
                new(2024, 1, 2),
                null,
                new(2026, 5, 6),
                7,
                "d",
                "c\nc",
                "r",
                "n",
                true,
                null,
                ["GZ0FE64C8RH000412", "GZ0FE64C8RH000400 to GZ0FE64C8RH000409"]
            )
        );
        Assert.Equal(new(1, 1, 0, 0, 0, 0), kept.Store.ImportOwn([campaign], "own.toml", Kept.Noon));
        Assert.Equal(new(1, 0, 0, 1, 0, 0), kept.Store.ImportOwn([campaign], "own.toml", Kept.Noon));
        var back = Assert.Single(kept.Store.Of(new("tarnmoor", "FELL640", 2024)));
        Assert.Equal(campaign.Says.Vins, back.Says.Vins);
        Assert.Equal(campaign, back with { Says = back.Says with { Vins = campaign.Says.Vins } });
        var other = campaign with { Says = campaign.Says with { ParkOutside = false } };
        Assert.Equal(1, kept.Store.ImportOwn([other], "own.toml", Kept.Noon).Updated); // "not said" is not "no"
    }

    [Fact]
    public void Models_whose_names_begin_alike_are_named_and_not_looked_in()
    {
        using var kept = new Kept();
        kept.Import(
            Row(),
            Row(model: "FELL 640 R"),
            Row(model: "FELL"),
            Row(model: "FELL 64X"),
            Row(make: "OTHER", model: "FELL 640 S"),
            Row(model: "")
        );
        Assert.Equal(["FELL", "FELL 640 R"], kept.Store.Alike(new("Tarnmoor", "Fell 640", 2024)));
    }

    [Fact]
    public void The_lists_are_told_with_their_last_import()
    {
        using var kept = new Kept();
        kept.Import(Row());
        kept.Import(Row(), "torn");
        kept.Store.ImportOwn([], "own.toml", Kept.Noon.AddDays(1));
        Assert.Equal(
            [
                new(CampaignSource.Public, "recalls.txt", "2026-03-02T12:00:00.0000000Z", 2, 1),
                new ImportedList(CampaignSource.Own, "own.toml", "2026-03-03T12:00:00.0000000Z", 0, 0),
            ],
            kept.Store.Lists()
        );
    }

    private static IReadOnlyList<Campaign> Everything(byte[] file)
    {
        List<Campaign> all = [];
        foreach (
            var line in System.Text.Encoding.Latin1.GetString(file).Split('\n', StringSplitOptions.RemoveEmptyEntries)
        )
            all.Add(RecallRow.Read(System.Text.Encoding.Latin1.GetBytes(line)).Campaign!);
        foreach (
            var row in new[]
            {
                Row(),
                Row("A", model: ""),
                Row("B", year: "9999"),
                Row("C", year: "2023"),
                Row("D", model: "FELL 640 R"),
            }
        )
            all.Add(RecallRow.Read(System.Text.Encoding.Latin1.GetBytes(row)).Campaign!);
        return [.. all.DistinctBy(c => (c.Number, NameKey.Of(c.Make), NameKey.Of(c.Model), c.Year, c.Component))];
    }
}
