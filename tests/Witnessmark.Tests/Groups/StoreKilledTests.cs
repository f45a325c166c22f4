namespace Witnessmark.Tests.Groups;

// Source: own derivation; the promise of the ledger, tried on a real server and a real PostgreSQL with the real signal.
public sealed class StoreKilledTests : IDisposable
{
    private const int Rounds = 3;
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
        Assert.Empty(
            load.Faults(
                store.Value("SELECT string_agg(\"Id\", ' ' ORDER BY \"Order\") FROM shop_north.entries")!.Split(' ')
            )
        );
        Assert.True(load.Unanswered >= Rounds, "Hardly a kill fell into a request: the test proves little.");
        var (_, says) = GroupFolder.Run("verify", "--group", shop.Group);
        Assert.StartsWith("Intact: ", says);
        TestContext.Current.SendDiagnosticMessage(
            $"{Rounds} kills, {load.Acknowledged} acknowledged, {load.Unanswered} requests without a yes. {says}"
        );
    }
}
