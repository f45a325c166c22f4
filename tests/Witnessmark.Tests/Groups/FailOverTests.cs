using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; the promise of the ledger, tried on real servers and a real PostgreSQL with its standby, with the real signal.
public sealed class FailOverTests : IDisposable
{
    private const string Standby = "second";
    private const int Devices = 12;

    private readonly Postgres primary = Postgres.Started();
    private readonly Postgres standby;

    public FailOverTests() => standby = primary.Follower(Standby);

    public void Dispose()
    {
        standby.Dispose();
        primary.Dispose();
    }

    [Fact]
    public async Task A_killed_server_and_then_a_killed_primary_under_load_lose_and_double_nothing()
    {
        primary.WaitFor(Standby);
        using var shop = new GroupFolder("north", primary, standby);
        using var one = shop.Serve();
        using var other = shop.Serve();
        using var balancer = new Balancer([one.Client.BaseAddress!, other.Client.BaseAddress!]);
        using var load = new GroupLoad(balancer, Devices, seed: 20261129);
        load.UntilAllGotOn();
        one.Kill();
        load.UntilAllGotOn();
        var before = load.Acknowledged;
        primary.Kill();
        standby.Promote();
        load.UntilAllGotOn();
        await load.Stop();

        Assert.Empty(load.Faults(InTheStandby()));
        Assert.True(
            before > Devices,
            $"Only {before} were acknowledged before the primary died: the test proves little."
        );
        Assert.True(load.Unanswered > 0, "No request was cut: the test proves little.");
        var (exit, says) = GroupFolder.Run("verify", "--group", shop.Group);
        Assert.StartsWith("Intact: ", says);
        Assert.Equal(0, exit);
        TestContext.Current.SendDiagnosticMessage(
            $"{before} acknowledged before the primary died, {load.Acknowledged} in all, {load.Unanswered} requests without a yes. {says}"
        );
    }

    [Fact]
    public async Task The_same_load_finds_what_a_standby_loses_that_nobody_waits_for()
    {
        using var shop = new GroupFolder("north", primary, standby);
        using var server = shop.Serve();
        using var balancer = new Balancer([server.Client.BaseAddress!]);
        using var load = new GroupLoad(balancer, Devices, seed: 7);
        load.UntilAllGotOn();
        standby.Kill();
        load.UntilAllGotOn();
        primary.Kill();
        standby.Start();
        standby.Promote();
        await load.Stop();
        Assert.NotEmpty(load.Faults(InTheStandby()));
    }

    [Fact]
    public async Task Until_the_standby_has_it_nothing_is_acknowledged_not_even_what_the_store_shows_already()
    {
        primary.WaitFor(Standby);
        using var shop = new GroupFolder("north", primary, standby);
        using var one = shop.Serve();
        using var other = shop.Serve();
        var entry = Notes.Next("bench", 1, null);
        standby.StopReceiving();
        var sent = one.Post(entry);
        Postgres.Until(() => Waiting() == "1");
        primary.Sql("SELECT pg_cancel_backend(pid) FROM pg_stat_activity WHERE wait_event = 'SyncRep'");
        using (var broken = await sent)
            Assert.Equal(System.Net.HttpStatusCode.ServiceUnavailable, broken.StatusCode);
        Assert.Equal("1", primary.Value("SELECT count(*) FROM shop_north.entries")); // this machine alone has it

        var again = other.Post(entry);
        Postgres.Until(() => Waiting() == "1");
        Assert.False(again.IsCompleted);
        standby.ReceiveAgain();
        using var answer = await again;
        Assert.True(answer.IsSuccessStatusCode, await Said(answer));
        Assert.Equal("1", standby.Value("SELECT count(*) FROM shop_north.entries"));
    }

    private string[] InTheStandby() =>
        standby.Value("SELECT string_agg(\"Id\", ' ' ORDER BY \"Order\") FROM shop_north.entries")!.Split(' ');

    private string? Waiting() => primary.Value("SELECT count(*) FROM pg_stat_activity WHERE wait_event = 'SyncRep'");

    private static Task<string> Said(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync();
}
