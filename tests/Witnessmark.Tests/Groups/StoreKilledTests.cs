namespace Witnessmark.Tests.Groups;

// Source: own derivation; the promise of the ledger, tried on a real server and a real PostgreSQL with the real signal.
public sealed class StoreKilledTests : IDisposable
{
    private const int Rounds = 4;
    private readonly Postgres store = Postgres.Started();

    public void Dispose() => store.Dispose();

    [Fact]
    public async Task Killed_again_and_again_under_load_it_loses_and_doubles_nothing()
    {
        using var shop = new GroupFolder("north", store);
        using var server = shop.Serve();
        using var balancer = new Balancer([server.Client.BaseAddress!]);
        using var load = new GroupLoad(balancer, devices: 12, seed: 20260302);
        for (var round = 1; round <= Rounds; round++)
        {
            load.UntilAllGotOn();
            store.Kill();
            store.Start();
        }
        load.UntilAllGotOn();
        await load.Stop();
        Assert.Empty(load.Faults(await server.Ids()));
        Assert.True(load.Unanswered >= Rounds, "Hardly a kill fell into a request: the test proves little.");
        var (_, says) = GroupFolder.Run("verify", "--group", shop.Group);
        Assert.StartsWith("Intact: ", says);
        TestContext.Current.SendDiagnosticMessage(
            $"{Rounds} kills, {load.Acknowledged} acknowledged, {load.Unanswered} requests without a yes. {says}"
        );
    }

    [Theory]
    [InlineData("fsync=off", "fsync = off")]
    [InlineData("full_page_writes=off", "full_page_writes = off")]
    [InlineData("synchronous_commit=off", "synchronous_commit = off")]
    [InlineData("synchronous_commit=local", "synchronous_commit = local")]
    public void A_store_that_promises_less_is_not_served(string setting, string named)
    {
        using var shop = new GroupFolder("north", store);
        store.Kill();
        store.Start(setting);
        var (exit, says) = GroupFolder.Run("serve", "--port", "0", "--data", shop.Files, "--group", shop.Group);
        Assert.Contains(named, says);
        Assert.Contains("acknowledged entries can be lost", says);
        Assert.Equal(2, exit);
    }
}
