using Witnessmark.Bench.Tests.Record;

namespace Witnessmark.Ledger.Tests;

// Source: own derivation; each test changes the file behind the program's back and expects the change to be named.
public sealed class LedgerCheckTests : IDisposable
{
    private readonly Shop _shop = new();

    public LedgerCheckTests() => _shop.Post([.. Made.Chain("bench", 5), .. Made.Chain("tablet", 2)]);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void An_untouched_ledger_is_intact()
    {
        var finding = _shop.Check();
        Assert.Equal((7, 1, 0), (finding.Entries, finding.Jobs, finding.SetAside));
        Assert.Empty(finding.Faults);
    }

    [Theory]
    [InlineData(
        "UPDATE entries SET Body = replace(Body, 'bench-3', 'bench-4') WHERE Id = 'bench-3'",
        "Entry bench-3 (number 3"
    )]
    [InlineData("UPDATE entries SET Body = 'x' WHERE Id = 'bench-3'", "Entry bench-3 (order 3")]
    [InlineData("UPDATE entries SET At = '2026-03-02T09:16:00Z' WHERE Id = 'tablet-1'", "Entry tablet-1 (number 1")]
    [InlineData("UPDATE entries SET Hash = Hash || '0' WHERE Id = 'bench-2'", "Entry bench-2 (number 2")]
    [InlineData(
        "UPDATE entries SET JobHash = 'x' WHERE Id = 'bench-2'",
        "Entry bench-2 (order 2) does not fit the chain"
    )]
    [InlineData("UPDATE entries SET Job = '413' WHERE Id = 'bench-2'", "Entry bench-2 (number 2")]
    [InlineData("DELETE FROM entries WHERE Id = 'bench-3'", "Entry bench-4 (number 4")]
    [InlineData("DELETE FROM entries WHERE Id = 'bench-1'", "Entries before bench-2 (order 2) were taken away")]
    [InlineData("DELETE FROM entries WHERE Id = 'tablet-2'", "Job 412 does not end where its chain says")]
    [InlineData("DELETE FROM entries", "All entries of job 412 were taken away")]
    public void A_change_is_found_and_named(string sql, string says)
    {
        _shop.Sql(sql);
        Assert.Contains(_shop.Check().Faults, fault => fault.StartsWith(says, StringComparison.Ordinal));
    }
}
