using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

/// <summary>An entry that counts by somebody's word counts only when the shop was shown that it is theirs.</summary>
public sealed class WordOverHttpTests : IDisposable
{
    private const string Lead = ClosedShop.Lead;
    private const string Technician = ClosedShop.Technician;
    private const string Tablet = "d-tablet";

    private readonly TempFolder folder = new();
    private readonly RunningShop shop;
    private readonly HttpDevice desk;
    private readonly HttpDevice tablet;
    private readonly List<Entry> written = [];

    public WordOverHttpTests()
    {
        shop = RunningShop.Serve(folder.Path);
        (desk, tablet) = (new(shop, "d-desk"), new(shop, Tablet));
    }

    public void Dispose()
    {
        desk.Dispose();
        tablet.Dispose();
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task A_safety_point_that_is_dropped_in_the_name_of_a_lead_without_their_word_is_still_asked_for()
    {
        await BramIsIn();
        var forged = await Brings(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", Lead));
        var madeUp = await Brings(EntryKind.Dropped, EntryBody.Dropped("rear-pads", "new last week", Lead, "1.x"));
        var given = await Word(EntryKind.Dropped, Lead, ClosedShop.Passphrase, "front-hoses");
        var good = await Brings(EntryKind.Dropped, EntryBody.Dropped("front-hoses", "new last week", Lead, given));
        var again = await Brings(EntryKind.Dropped, EntryBody.Dropped("front-hoses", "new last week", Lead, given));
        Assert.Equal([forged.Id, madeUp.Id, again.Id], await NotCounting());
        var paper = await Paper();
        Assert.Contains(good.Id, paper, StringComparison.Ordinal);
        Assert.All([forged, madeUp, again], e => Assert.DoesNotContain(e.Id, paper, StringComparison.Ordinal));
        var book = await Book();
        Assert.Contains($"{Lead} gave their word in 412: front-hoses is dropped.", book);
        Assert.Contains(
            $"An entry of 412 by {Technician} (dropped) counts by the word of {Lead} and came without it. It does not count.",
            book
        );
    }

    [Fact]
    public async Task Who_vouches_and_who_lets_a_machine_leave_shows_it_too()
    {
        await BramIsIn();
        var vouch = await Word(EntryKind.Vouch, Lead, ClosedShop.Passphrase, "chain-slack", "max 2 mm, shop");
        var leave = await Word(EntryKind.CampaignLeft, Technician, ClosedShop.Pin, "26X-011");
        var other = EntryBody.Vouch("chain-slack", Lead, "max 3 mm, shop", vouch); // another figure than was seen
        var wrong = await Brings(EntryKind.Vouch, other);
        await Brings(EntryKind.Vouch, EntryBody.Vouch("chain-slack", Lead, "max 2 mm, shop", vouch));
        await Brings(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", "on a trailer", leave));
        var unsaid = await Brings(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-012", "on a trailer"));
        Assert.Equal([wrong.Id, unsaid.Id], await NotCounting());
    }

    [Fact]
    public async Task What_names_nobody_is_taken_as_ever()
    {
        await BramIsIn();
        await Brings(EntryKind.Dropped, EntryBody.Dropped("keys", "only one exists"));
        await Brings(EntryKind.Planned, EntryBody.Planned("keys", "found the other one"));
        Assert.Empty(await NotCounting());
    }

    [Fact]
    public async Task A_good_entry_stays_good_when_another_comes_under_its_name()
    {
        await BramIsIn();
        var given = await Word(EntryKind.Dropped, Lead, ClosedShop.Passphrase, "front-pads");
        var good = await Brings(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", Lead, given));
        var forged = good with { Body = EntryBody.Dropped("front-pads", "another reason", Lead) };
        await Post(forged);
        Assert.Empty(await NotCounting());
    }

    [Fact]
    public async Task While_the_door_is_open_nobody_shows_anything()
    {
        using var asked = await desk.Post("/api/door/word", Asked(EntryKind.Dropped, Lead, "any", "front-pads"));
        Assert.Contains("door is open", await HttpDevice.Said(asked, "error", HttpStatusCode.Conflict));
        await Brings(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", Lead));
        Assert.Empty(await NotCounting());
    }

    [Fact]
    public async Task There_is_no_word_for_anything_else()
    {
        await BramIsIn();
        foreach (var (kind, about) in new[] { (EntryKind.Release, "412"), (EntryKind.Vouch, "p"), ("", "p") })
        {
            using var asked = await tablet.Post("/api/door/word", Asked(kind, Lead, ClosedShop.Passphrase, about));
            Assert.Contains("no word for that", await HttpDevice.Said(asked, "error", HttpStatusCode.BadRequest));
        }
    }

    private async Task<string> Word(string kind, string person, string secret, string about, string? figure = null)
    {
        using var given = await tablet.Post("/api/door/word", Asked(kind, person, secret, about, figure));
        return await HttpDevice.Said(given, "confirmed");
    }

    private static object Asked(string kind, string person, string secret, string about, string? figure = null) =>
        new
        {
            job = "412",
            kind,
            person,
            secret,
            about,
            figure,
        };

    private async Task<Entry> Brings(string kind, JsonElement body)
    {
        var draft = new EntryDraft(
            Guid.NewGuid().ToString("N"),
            "harrow-lane",
            "412",
            kind,
            body,
            null,
            null,
            "2026-11-29T10:00:00.000+00:00",
            Technician
        );
        var entry = Entries.Sealed(draft, Tablet, 1, written.Count + 1, written.LastOrDefault()?.Hash);
        written.Add(entry);
        await Post(entry);
        return entry;
    }

    private async Task Post(Entry entry)
    {
        var batch = new
        {
            protocol = 1,
            device = Tablet,
            epoch = 1,
            entries = new[] { EntryJson.Write(entry) },
        };
        using var answer = await tablet.Post("/api/entries", batch);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    private async Task<string[]> NotCounting()
    {
        var page = await tablet.Client.GetFromJsonAsync<JsonElement>("/api/entries");
        return [.. page.GetProperty("notCounting").EnumerateArray().Select(id => id.GetString()!)];
    }

    private Task<string> Paper() => desk.Client.GetStringAsync("/api/jobs/412/log-book.json");

    private async Task<string> Book()
    {
        var book = await desk.Client.GetFromJsonAsync<JsonElement>("/api/door/book");
        return string.Join('\n', book.GetProperty("events").EnumerateArray().Select(e => e.GetProperty("says")));
    }

    private async Task BramIsIn()
    {
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        var code = await HttpDevice.Said(await desk.Post("/api/door/device-code"), "code");
        (await tablet.Enrol(code)).Dispose();
        code = await HttpDevice.Said(await desk.Post("/api/door/people/Bram%20Okello/code"), "code");
        Assert.Equal("technician", await HttpDevice.Said(await tablet.Start(Technician, code, ClosedShop.Pin), "role"));
    }
}
