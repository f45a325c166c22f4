namespace Witnessmark.Tests.Serve;

public sealed class NewsTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10); // shorter than what it says by itself

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task What_comes_in_is_told_at_once_to_all_who_listen()
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var one = await Listen(shop);
        using var other = await Listen(shop);
        var before = await Head(one);
        Assert.Equal(before, await Head(other));
        foreach (var entry in Notes.Chain(3))
        {
            using var taken = await shop.Post(entry);
            Assert.True(taken.IsSuccessStatusCode);
            Assert.Equal(++before, await Head(one));
            Assert.Equal(before, await Head(other));
        }
    }

    [Fact]
    public async Task Whoever_listens_does_not_keep_the_server_from_stopping()
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var one = await Listen(shop);
        await Head(one);
        Assert.True(await shop.StopsWithin(Patience));
    }

    private static async Task<StreamReader> Listen(RunningShop shop) =>
        new(await shop.Client.GetStreamAsync("/api/news"));

    private static async Task<int> Head(StreamReader news)
    {
        using var enough = new CancellationTokenSource(Patience);
        while (await news.ReadLineAsync(enough.Token) is { } line)
            if (line.StartsWith("data: ", StringComparison.Ordinal))
                return int.Parse(line["data: ".Length..], System.Globalization.CultureInfo.InvariantCulture);
        throw new InvalidOperationException("The news ended.");
    }
}
