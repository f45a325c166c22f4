using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Browser.Tests;

/// <summary>Every screen in a language that is none: nothing is said past the catalogue, and nothing that grows by a third breaks a screen.</summary>
public sealed partial class PseudoLanguageTests(Published published, Chromium chromium)
{
    // a language's ways of days are code, and this one has those of German
    private static readonly string[] DaysOfGerman =
    [
        .. "Mo Di Mi Do Fr Sa So".Split(' '),
        .. "Jan Feb März Apr Mai Juni Juli Aug Sept Okt Nov Dez".Split(' '),
        .. "Januar Februar April August September Oktober November Dezember".Split(' '),
    ];

    private const string Shown = """
        () => {
          const english = (e) => e.closest("[lang]:not(html)") !== null || e.closest("script, style, noscript") !== null;
          const seen = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !english(e);
          const found = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const node = walker.currentNode;
            if (node.parentElement && seen(node.parentElement) && node.textContent.trim()) found.push(node.textContent.trim());
          }
          for (const e of document.querySelectorAll("[aria-label], [title], [placeholder], [alt]"))
            if (seen(e))
              for (const name of ["aria-label", "title", "placeholder", "alt"])
                if (e.getAttribute(name)) found.push(e.getAttribute(name));
          // a calculation of the handbook is called in English, and no title can say of its parts in which language they are
          return document.querySelector("h1[lang]") ? found : [...found, document.title];
        }
        """;

    [Fact]
    public async Task Nothing_is_said_past_the_catalogue_and_nothing_is_wider_than_the_narrowest_phone()
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        // a route does not see what a service worker fetches
        await using var device = await chromium.Device(worker: false, sound: SoundFile.Plucked(88.5));
        await shop.Post(InstrumentJob.Tightened);
        var german = await File.ReadAllTextAsync(
            Path.Combine(published.Folder, "wwwroot", "languages", "de.po"),
            TestContext.Current.CancellationToken
        );
        await device.Context.RouteAsync(
            "**/languages/de.po",
            route => route.FulfillAsync(new() { Body = Pseudo.Catalogue(german), ContentType = "text/plain" })
        );
        var hand = await device.Open(shop);
        await hand.Open("settings");
        await hand.Page.Locator("#language .choice").Last.ClickAsync();
        await Assertions.Expect(hand.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        hand.Finds = Pseudo.Finds;
        var data = DataWords(published.Folder);
        var shopSays = ShopSays(german);
        List<string> found = [];
        await Screens.Walk(
            async screen =>
            {
                found.AddRange((await Unsaid(hand.Page, data, shopSays)).Select(t => $"{screen.Name}: {t}"));
                found.AddRange((await Narrow.Breaks(hand.Page)).Select(t => $"{screen.Name}: {t}"));
            },
            async screen => found.AddRange(await Stuck(hand, screen))
        );
        Assert.True(found.Count == 0, string.Join('\n', found.Distinct().Prepend($"{found.Count} found:")));
    }

    /// <summary>Opens a screen; one that cannot be come to is said, and hides nothing behind it.</summary>
    private static async Task<string[]> Stuck(BenchHand hand, Screen screen)
    {
        try
        {
            await screen.Open(hand);
            return [];
        }
        catch (Exception stuck) when (stuck is TimeoutException or PlaywrightException)
        {
            var picture = Path.Combine(Published.Root, "out", $"pseudo-{screen.Name}.png");
            await hand.Page.ScreenshotAsync(new() { Path = picture });
            return [$"{screen.Name}: {stuck.Message}"];
        }
    }

    private static async Task<IEnumerable<string>> Unsaid(IPage page, HashSet<string> data, Regex shopSays) =>
        (await page.EvaluateAsync<string[]>(Shown)).Where(t =>
            IsUnsaid(t, data) && IsUnsaid(shopSays.Replace(t, " "), data)
        );

    private static bool IsUnsaid(string text, HashSet<string> data) =>
        Word().Matches(JobNumber().Replace(Pseudo.Outside(text), " ")).Any(w => !data.Contains(w.Value));

    /// <summary>The shop has the real catalogue, and says in German what it refuses or warns of.</summary>
    private static Regex ShopSays(string german) =>
        new(
            string.Join(
                '|',
                PoFile
                    .Read(german)
                    .SelectMany(e => e.Texts)
                    .Where(t => German().IsMatch(t))
                    .OrderByDescending(t => t.Length)
                    .Select(t => Place().Replace(Regex.Escape(t), ".+?"))
            ),
            RegexOptions.IgnoreCase // a text may begin a line
        );

    /// <summary>Words of the shop's own data: names, models, plates, documents; units; what the hand types; what calls itself so in any language.</summary>
    private static HashSet<string> DataWords(string folder)
    {
        string[] own =
        [
            "Witnessmark",
            "English",
            "Deutsch",
            "SHA",
            "VIN",
            "QR",
            "PDF",
            "ISO",
            "JCGM",
            "GUM",
            "km",
            "mm",
            "min",
            .. DaysOfGerman,
        ];
        string[] typed =
        [
            "Fell workshop manual",
            "the page of the manual",
            "Rear brake hose is cracked at the banjo",
            "Brake hose, rear",
            "Weir \"Cycles\"",
            "Weir 500",
            "Ada Brook",
            "Bo Ley",
            "Desk",
            "own.number",
            "Own",
        ];
        var texts = Directory
            .GetFiles(Path.Combine(folder, "demo"), "*.*", SearchOption.AllDirectories)
            .Select(File.ReadAllText)
            .SelectMany(t => Quoted().Matches(t).Select(m => m.Groups[1].Value));
        // the lists of recalls hold nothing but data
        var lists = Directory
            .GetFiles(Path.Combine(folder, "demo"), "*.tsv", SearchOption.AllDirectories)
            .Select(File.ReadAllText);
        return
        [
            .. own,
            .. texts.Concat(typed).Concat(lists).SelectMany(t => Word().Matches(t).Select(m => m.Value)),
            .. Handbook.Quantities.UnitTable.All.SelectMany(u => Word().Matches(u.Symbol).Select(m => m.Value)),
        ];
    }

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Word();

    // shorter ones would be found in English, too
    [GeneratedRegex(@"\p{L}{4,}")]
    private static partial Regex German();

    // as Regex.Escape leaves the place of an argument
    [GeneratedRegex(@"\\\{\d+\}")]
    private static partial Regex Place();

    // of a job that a device opened
    [GeneratedRegex(@"\b\d+-[a-z0-9]+\b")]
    private static partial Regex JobNumber();

    [GeneratedRegex("\"([^\"\n]*)\"")]
    private static partial Regex Quoted();
}
