using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A technician's hand: taps what stands on the screen by its words.</summary>
public sealed class BenchHand(IPage page, string address)
{
    public const string Person = "Ines Tallow";
    public const string DemoJob = "412";

    public IPage Page => page;

    /// <summary>What finds English words, whole or in part, on a screen in another language; null: they stand there as they are.</summary>
    public Func<string, bool, Regex>? Finds { get; set; }

    public ILocator Verdict => page.Locator("#verdict");

    public ILocator Saved => page.Locator(".chip");

    public string Address(string path = "") => address + path;

    /// <summary>Starts the program and says who works with it.</summary>
    public async Task<BenchHand> Start()
    {
        await page.GotoAsync(address);
        await Tap(Person);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Today" })).ToBeVisibleAsync();
        return this;
    }

    /// <summary>Goes to a screen: inside the program where it runs, as a link does, for starting it takes seconds; else by its address.</summary>
    public async Task Open(string path)
    {
        if (await page.EvaluateAsync<bool>(GoInside, address + path))
            await Stands();
        else
            await OpenAnew(path);
    }

    /// <summary>Goes to a screen by its address, so that the program starts anew.</summary>
    public async Task OpenAnew(string path)
    {
        await page.GotoAsync(address + path);
        await Stands();
    }

    // not the page that is shown while the program starts
    private Task Stands() => page.Locator("main:not(.starting) h1").First.WaitForAsync();

    // two frames: by then the screen that was left is gone
    private const string GoInside = """
        async to => {
            const runs = window.Blazor && document.querySelector('main:not(.starting) h1');
            if (!runs || to === location.href || new URL(to).origin !== location.origin)
                return false;
            Blazor.navigateTo(to);
            for (let frame = 0; frame < 2; frame++)
                await new Promise(requestAnimationFrame);
            return true;
        }
        """;

    /// <summary>Opens a point of a job, the demo's where none is named.</summary>
    public async Task Point(string point, string job = DemoJob)
    {
        await Open($"jobs/{job}/bench/{point}");
        await page.Locator(".bench .dock").WaitForAsync();
    }

    public async Task Tap(string words) => await page.GetByRole(AriaRole.Button, Named(words)).First.ClickAsync();

    /// <summary>Chooses the first offer that has these words in it.</summary>
    public async Task Choose(string words) =>
        await page.Locator(".choice")
            .Filter(
                new()
                {
                    HasTextRegex = Finds?.Invoke(words, false) ?? new(Regex.Escape(words), RegexOptions.IgnoreCase),
                }
            )
            .First.ClickAsync();

    /// <summary>Taps the keys of our own keypad.</summary>
    public async Task Type(string keys)
    {
        foreach (var key in keys)
            await Key(key);
    }

    public async Task Key(char key)
    {
        var name = key switch
        {
            '.' or ',' => "Decimal point",
            '-' => "Minus",
            '\b' => "Delete",
            _ => key.ToString(),
        };
        await page.Locator(".keypad")
            .GetByRole(
                AriaRole.Button,
                Finds is null ? new() { Name = name, Exact = true } : new() { NameRegex = Finds(name, true) }
            )
            .ClickAsync();
    }

    /// <summary>Fills the boxes one after the other and saves.</summary>
    public async Task Read(params string[] values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            await Type(values[i]);
            if (i < values.Length - 1)
                await page.Locator(".foot .primary").ClickAsync();
        }
        await Save();
    }

    /// <summary>
    /// Opens the job that is filled in on arrival. Recalls and the plan that come meanwhile may push the button from under the finger, as
    /// they may a person's: then the tap is made again.
    /// </summary>
    public async Task OpenJob()
    {
        var button = page.Locator("#open");
        for (var again = 5; ; again--)
        {
            await button.ClickAsync();
            try
            {
                await page.WaitForURLAsync("**/jobs/*", new() { Timeout = 20_000 });
                return;
            }
            catch (TimeoutException)
            {
                if (page.Url.Contains("/jobs/", StringComparison.Ordinal))
                    return;
                // only where nothing was opened the tap met something else
                if (again == 0 || !await button.IsEnabledAsync())
                    throw;
            }
        }
    }

    public async Task Save() => await page.Locator("#save").ClickAsync();

    /// <summary>Writes a note at the point that stands on the screen.</summary>
    public async Task Note(string words)
    {
        await Tap("Note");
        await page.Locator("#words").FillAsync(words);
        await Save();
        await page.Locator("#words").WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    public async Task Mark()
    {
        await page.Locator("#mark").ClickAsync();
        await Assertions.Expect(Says($"Marked by {Person}")).ToBeVisibleAsync();
    }

    /// <summary>Chooses a picture as a phone's camera would hand it over, and says what it shows.</summary>
    public async Task Photographs(string shows)
    {
        await page.Locator("#picture").SetInputFilesAsync(await Camera.Picture(page));
        await page.Locator(".taken").WaitForAsync();
        await page.Locator("#shows").FillAsync(shows);
    }

    public async Task SeesVerdict(string headline) =>
        await Assertions.Expect(Verdict.Locator("strong")).ToHaveTextAsync(headline);

    public async Task Sees(string words) => await Assertions.Expect(Says(words)).ToBeVisibleAsync();

    /// <summary>Where these words stand first.</summary>
    public ILocator Says(string words) =>
        (Finds is null ? page.GetByText(words) : page.GetByText(Finds(words, false))).First;

    private PageGetByRoleOptions Named(string words) =>
        Finds is null ? new() { Name = words, Exact = true } : new() { NameRegex = Finds(words, true) };

    /// <summary>Waits until so many entries are said to be saved here and at the shop.</summary>
    public async Task SeesSaved(int here, int atShop) =>
        await Assertions
            .Expect(Saved)
            .ToHaveTextAsync(
                new Regex($@"Saved here {here}\s*·?\s*saved at the shop {atShop}\b"),
                new() { Timeout = 90_000 }
            );
}
