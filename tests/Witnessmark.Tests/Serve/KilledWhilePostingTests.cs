using System.Text.Json;

namespace Witnessmark.Tests.Serve;

// Source: own derivation; the promise of the ledger, tried on the real program with the real signal.
public class KilledWhilePostingTests
{
    private const int Count = 400;

    [Theory]
    [InlineData(60)]
    [InlineData(350)]
    public async Task Nothing_acknowledged_is_lost_and_nothing_is_doubled(int killAfterMilliseconds)
    {
        using var folder = new TempFolder();
        var chain = Notes.Chain(Count);
        var acknowledged = 0;
        using (var shop = RunningShop.Serve(folder.Path))
        {
            await shop.Post(chain[0]); // warm: the kill shall fall into the posting
            var kill = Task.Run(async () =>
            {
                await Task.Delay(killAfterMilliseconds);
                shop.Kill();
            });
            acknowledged = await PostUntilItDies(shop, [.. chain]);
            await kill;
        }

        using var again = RunningShop.Serve(folder.Path);
        var ids = await again.Ids();
        Assert.Equal(["demo-412", .. chain.Take(ids.Count - 1).Select(e => e.Id)], ids);
        Assert.InRange(ids.Count - 1, acknowledged, Count);

        for (var at = 0; at < Count; at += 200)
            Assert.Equal(at + 200, await UpTo(await again.Post(chain.Skip(at).Take(200))));
        Assert.Equal(["demo-412", .. chain.Select(e => e.Id)], await again.Ids());
        again.Kill();
        Assert.Equal((0, "Intact: 401 entries in 1 jobs; 0 set aside."), Verify(folder.Path));
    }

    private static async Task<int> PostUntilItDies(RunningShop shop, Bench.Record.Entry[] chain)
    {
        var acknowledged = 1;
        try
        {
            for (var at = 1; at < chain.Length; at += 3)
                acknowledged = await UpTo(await shop.Post(chain.Skip(at).Take(3)));
        }
        catch (HttpRequestException)
        {
            return acknowledged;
        }
        Assert.Fail("It was killed only after everything was posted: the test proves nothing.");
        return 0;
    }

    private static async Task<int> UpTo(HttpResponseMessage response)
    {
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        return json.RootElement.GetProperty("upTo").GetInt32();
    }

    private static (int ExitCode, string Output) Verify(string folder)
    {
        using var process = RunningShop.Start("verify", "--data", folder);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.Trim());
    }
}
