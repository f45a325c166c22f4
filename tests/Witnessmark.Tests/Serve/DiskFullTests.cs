using System.Net;
using System.Net.Http.Json;
using Witnessmark.Tests.Doors;
using Witnessmark.Tests.Groups;

namespace Witnessmark.Tests.Serve;

/// <summary>
/// The shop's disk is full, as the system says it: a file leads to <c>/dev/full</c>, which takes nothing. That the ledger says so of each of its writes
/// is tried in its own tests. <b>Source.</b> Linux man-pages, full(4): a write to it fails with ENOSPC.
/// </summary>
public sealed class DiskFullTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_figure_is_not_set_while_the_disk_is_full_and_the_sheet_stays_whole()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var sheet = Path.Combine(folder.Path, "sheets", "fell-640.toml");
        var before = await File.ReadAllTextAsync(sheet, TestContext.Current.CancellationToken);
        File.CreateSymbolicLink(sheet + ".new", "/dev/full");
        using var answer = await shop.Client.PutAsJsonAsync(
            "/api/sheets/fell-640/figures/chain.slack",
            Figures.Slack(4),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(
            "The shop's disk is full. Nothing of this was taken in: keep it and send it again when there is room.",
            await HttpDevice.Said(answer, "error", HttpStatusCode.InsufficientStorage)
        );
        Assert.Equal(before, await File.ReadAllTextAsync(sheet, TestContext.Current.CancellationToken));
        Assert.DoesNotContain(
            Figures.SlackPrinted,
            await shop.Client.GetStringAsync("/api/workbench", TestContext.Current.CancellationToken)
        );
        File.Delete(sheet + ".new");
        using var room = await shop.Client.PutAsJsonAsync(
            "/api/sheets/fell-640/figures/chain.slack",
            Figures.Slack(4),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(HttpStatusCode.OK, room.StatusCode);
    }
}
