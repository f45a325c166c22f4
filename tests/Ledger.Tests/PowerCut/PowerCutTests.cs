using System.Globalization;
using Witnessmark.Bench.Tests.Record;

namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>
/// The power fails while the ledger writes. Source: own derivation; what a disk may forget is what was not synchronised (fsync, POSIX.1-2017), and
/// SQLite documentation, PRAGMA synchronous: with a write-ahead log NORMAL and OFF may lose what was committed, FULL may not.
/// </summary>
[Collection(WatchedFiles.Name)] // one disk is watched at a time
public sealed class PowerCutTests
{
    private const string Longer = "WITNESSMARK_POWER_CUTS"; // so many ledgers instead of the few of an ordinary run
    private const int Usual = 6;

    [Fact]
    public void Whenever_the_power_fails_all_that_was_acknowledged_is_found_again()
    {
        var ledgers = int.TryParse(
            Environment.GetEnvironmentVariable(Longer),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var asked
        )
            ? asked
            : Usual;
        var cuts = 0;
        for (var seed = 1; seed <= ledgers; seed++)
        {
            using var shop = new CutLedger(seed);
            shop.Take(Made.Chain("bench", 120));
            var faults = shop.Faults();
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults.Take(5))}");
            cuts += shop.Cuts;
        }
        Assert.True(cuts > 20 * ledgers, $"The power failed {cuts} times: the test proves little.");
        TestContext.Current.SendDiagnosticMessage($"{ledgers} ledgers, {cuts} times without power.");
    }

    // the harness itself: a shop that does not wait for its disk is caught
    [Theory]
    [InlineData("OFF")]
    [InlineData("NORMAL")]
    public void A_ledger_that_does_not_wait_for_its_disk_is_caught(string synchronous)
    {
        using var shop = new CutLedger(1, synchronous);
        shop.Take(Made.Chain("bench", 120));
        Assert.Contains(shop.Faults(), f => f.Contains("acknowledged entries are gone", StringComparison.Ordinal));
    }
}
