namespace Witnessmark.Browser.Tests;

/// <summary>A walk through the screens: all of them, or those that <c>WITNESSMARK_SCREENS=figure,handbook</c> names and those on the way there.</summary>
public static partial class Screens
{
    /// <summary>Goes through the screens that are wanted, and looks at each of them.</summary>
    public static async Task Walk(BenchHand hand, Func<Screen, Task> look) =>
        await Walk(look, screen => screen.Open(hand));

    /// <summary>The same where a way may be another one.</summary>
    public static async Task Walk(Func<Screen, Task> look, Func<Screen, Task> open)
    {
        var wanted = Wanted(Environment.GetEnvironmentVariable("WITNESSMARK_SCREENS"));
        foreach (var screen in WithWays(wanted))
        {
            await open(screen);
            if (wanted.Contains(screen))
                await look(screen);
        }
    }

    /// <summary>The screens by these names with commas between them; all, where none is named.</summary>
    public static IReadOnlyList<Screen> Wanted(string? names)
    {
        if (string.IsNullOrWhiteSpace(names))
            return All;
        var named = names.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return named.Except(All.Select(s => s.Name)).ToList() is [_, ..] unknown
            ? throw new ArgumentException(
                $"No screen is called {string.Join(", ", unknown)}. There are: {string.Join(", ", All.Select(s => s.Name))}."
            )
            : [.. All.Where(s => named.Contains(s.Name))];
    }

    /// <summary>These screens with those that a way to one of them leads over, in the order of a walk.</summary>
    public static IEnumerable<Screen> WithWays(IReadOnlyList<Screen> wanted)
    {
        var needed = new HashSet<Screen>();
        var leads = false;
        foreach (var screen in All.Reverse())
        {
            leads |= wanted.Contains(screen);
            if (leads)
                needed.Add(screen);
            leads &= screen.GoesOn;
        }
        return All.Where(needed.Contains);
    }
}
