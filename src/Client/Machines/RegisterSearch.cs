using Witnessmark.Bench.Campaigns;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Machines;

/// <summary>Looks in the shop's register as somebody types: the last text counts, and the shop is not asked for every letter of a quick hand.</summary>
internal sealed class RegisterSearch(Shop shop, Action answered)
{
    /// <summary>As many as the shop gives.</summary>
    public const int MostShown = 50;

    private const int Fewest = 3; // signs that the register's index needs
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(120);
    private CancellationTokenSource? running;

    /// <summary>What was found, or null while nothing is asked or answered.</summary>
    public FoundReply? Found { get; private set; }

    /// <summary>Why the shop did not answer, or null.</summary>
    public string? Trouble { get; private set; }

    public static bool IsEnough(string text) => NameKey.Of(text).Length >= Fewest;

    public void Ask(string text)
    {
        Stop();
        (Found, Trouble) = (null, null);
        if (!IsEnough(text))
            return;
        running = new();
        _ = Look(text, running.Token);
    }

    public void Stop()
    {
        running?.Cancel();
        running = null;
    }

    private async Task Look(string text, CancellationToken cancel)
    {
        await Task.Delay(Pause, CancellationToken.None);
        if (cancel.IsCancellationRequested)
            return;
        (FoundReply?, string?) answer;
        try
        {
            answer = (await shop.Find(text, cancel), null);
        }
        catch (ShopTrouble trouble)
        {
            answer = (null, trouble.Message);
        }
        if (cancel.IsCancellationRequested)
            return; // another text is asked for
        (Found, Trouble) = answer;
        answered();
    }
}
