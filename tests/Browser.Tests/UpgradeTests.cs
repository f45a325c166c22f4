using Microsoft.Playwright;
using Witnessmark.Bench.Record;

namespace Witnessmark.Browser.Tests;

/// <summary>The shop goes on with a newer program while a device with the older one holds many entries.</summary>
public sealed class UpgradeTests(Published published, Chromium chromium)
{
    private const int Many = 500;
    private const string ToShop = "**/api/entries";

    private const string Versions = """
        async () => (await caches.keys()).filter((name) => name.startsWith("shell ")).sort().join()
        """;

    private const string Waits = """
        async () => !!(await navigator.serviceWorker.getRegistration())?.waiting
        """;

    [Fact]
    public async Task The_newer_program_waits_until_all_five_hundred_entries_are_at_the_shop()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);
        var before = (await shop.EntryIds()).Count;
        var old = await hand.Page.EvaluateAsync<string>(Versions);
        await hand.Page.RouteAsync(ToShop, route => route.AbortAsync());
        await Hold(hand, Many);

        var newer = Newer(published.Folder);
        await shop.Upgrade(newer);
        await hand.Page.ReloadAsync();
        await hand.SeesSaved(Many + 1, 1);
        await hand.Page.WaitForFunctionAsync(Waits);
        Assert.Equal(old, (await hand.Page.EvaluateAsync<string>(Versions)).Split(',').Single(v => v == old));

        await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
        await hand.SeesSaved(Many + 1, Many + 1);
        await hand.Page.WaitForFunctionAsync(
            $"async () => {{ const now = await ({Versions})(); return now !== '{old}' && !now.includes(','); }}"
        );
        await hand.Page.ReloadAsync();
        await hand.SeesSaved(Many + 1, Many + 1);
        var ids = await shop.EntryIds();
        Assert.Equal(before + Many, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(0, await shop.Verify());
        await shop.Stop();
        Directory.Delete(newer, recursive: true);
    }

    [Fact]
    public async Task A_shop_that_speaks_a_protocol_of_tomorrow_is_told_apart_and_nothing_is_lost()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Page.RouteAsync(
            "**/api/workbench",
            async route =>
            {
                // the whole answer, not that nothing is new
                var asked = route.Request.Headers.Where(h => h.Key != "if-none-match");
                var answer = await route.FetchAsync(new() { Headers = asked });
                var text = await answer.TextAsync();
                Assert.StartsWith("{\"protocol\":1,", text);
                await route.FulfillAsync(
                    new() { Response = answer, Body = text.Replace("{\"protocol\":1,", "{\"protocol\":2,") }
                );
            }
        );
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 0);
        await hand.Open("device");
        await hand.Sees("The shop speaks protocol 2, which this version of the program does not know.");
        await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
        await hand.SeesSaved(1, 1);
        Assert.Equal(0, await shop.Verify());
    }

    /// <summary>Writes notes into the device's store as the program itself does: numbered, bound and sealed.</summary>
    private static async Task Hold(BenchHand hand, int count)
    {
        var facts = await hand.Page.EvaluateAsync<string[]>(
            """
            async () => {
              const opening = indexedDB.open("witnessmark");
              const store = await new Promise((done) => (opening.onsuccess = () => done(opening.result)));
              const facts = store.transaction("facts").objectStore("facts");
              const read = (key) => new Promise((done) => (facts.get(key).onsuccess = (e) => done(e.target.result)));
              const answer = [await read("device"), await read("headHash")];
              store.close();
              return answer;
            }
            """
        );
        var (device, hash) = (facts[0], facts[1]);
        List<string[]> held = [];
        for (var seq = 2; seq <= count + 1; seq++)
        {
            var draft = new EntryDraft(
                $"{device}-{seq}",
                "harrow-lane",
                BenchHand.DemoJob,
                EntryKind.Note,
                EntryBody.Note("chain-slack", $"note {seq}"),
                null,
                null,
                "2026-05-04T09:00:00.000+00:00",
                BenchHand.Person
            );
            var entry = Entries.Sealed(draft, device, 1, seq, hash);
            hash = entry.Hash;
            held.Add([entry.Id, EntryJson.Write(entry).GetRawText()]);
        }
        await hand.Page.EvaluateAsync(
            """
            async ([held, seq, hash]) => {
              const opening = indexedDB.open("witnessmark");
              const store = await new Promise((done) => (opening.onsuccess = () => done(opening.result)));
              const writing = store.transaction(["entries", "facts"], "readwrite");
              for (const [id, text] of held) writing.objectStore("entries").put({ id, text });
              writing.objectStore("facts").put(seq, "headSeq");
              writing.objectStore("facts").put(hash, "headHash");
              await new Promise((done) => (writing.oncomplete = done));
              store.close();
            }
            """,
            new object[] { held, count + 1, hash }
        );
    }

    /// <summary>The same program under another version: what a browser asks first, the list of its files, is another.</summary>
    private static string Newer(string folder)
    {
        var newer = BrowserDevice.Copy(folder);
        // without its list of packed files the server gives out those beside it, of which one is changed
        File.Delete(Path.Combine(newer, "witnessmark.staticwebassets.endpoints.json"));
        var assets = Path.Combine(newer, "wwwroot", "service-worker-assets.js");
        var text = File.ReadAllText(assets);
        Assert.Contains("\"version\": \"", text);
        File.WriteAllText(assets, text.Replace("\"version\": \"", "\"version\": \"newer-"));
        return newer;
    }
}
