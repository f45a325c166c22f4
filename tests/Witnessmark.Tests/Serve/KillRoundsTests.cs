namespace Witnessmark.Tests.Serve;

// Source: own derivation; the promise of the ledger, tried on the real program with the real signal.
public class KillRoundsTests
{
    private const string Longer = "WITNESSMARK_KILLS"; // so many rounds instead of those of an ordinary run
    private const int Usual = 100;

    private static readonly TimeSpan ReadyAgain = TimeSpan.FromSeconds(5);

    [Fact]
    public async Task Killed_again_and_again_under_load_it_loses_and_doubles_nothing()
    {
        using var folder = new TempFolder();
        var killed = new KillRounds(folder.Path, devices: 20, seed: 20260302);
        var rounds = int.TryParse(Environment.GetEnvironmentVariable(Longer), out var asked) ? asked : Usual;
        for (var round = 1; round <= rounds; round++)
        {
            var faults = await killed.Round();
            Assert.True(faults.Count == 0, $"round {round}: {string.Join(" ", faults.Take(5))}");
        }
        Assert.True(killed.CutRequests >= rounds, "Hardly a kill fell into a request: the test proves little.");
        Assert.True(
            killed.Acknowledged > 20 * rounds,
            $"Only {killed.Acknowledged} were sent: the test proves little."
        );
        Assert.True(killed.IsAllAsItWas(), "What one round found the last one does not.");
        // the quickest: other tests run beside it, and what they took of the computer says nothing of the program
        Assert.InRange(killed.Starts[0], TimeSpan.Zero, ReadyAgain);
        using var process = RunningShop.Start("verify", "--data", folder.Path);
        var said = (await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken)).Trim();
        Assert.StartsWith("Intact: ", said);
        TestContext.Current.SendDiagnosticMessage(
            $"{rounds} rounds, {killed.Acknowledged} acknowledged, {killed.CutRequests} requests cut, starts of {killed.Starts[0].TotalSeconds:0.0} to {killed.Starts[^1].TotalSeconds:0.0} s. {said}"
        );
    }
}
