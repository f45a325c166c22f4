using System.Net;
using Witnessmark.Doors;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

/// <summary>What the output of a running server tells of its door.</summary>
public sealed class DoorOutputTests : IDisposable
{
    private const string Lead = "Ines Tallow";
    private readonly TempFolder folder = new();
    private readonly RunningShop shop;
    private readonly HttpDevice desk;
    private readonly HttpDevice stranger;

    public DoorOutputTests()
    {
        shop = RunningShop.Serve(folder.Path);
        (desk, stranger) = (new(shop, "d-desk"), new(shop, "d-nobody"));
    }

    public void Dispose()
    {
        desk.Dispose();
        stranger.Dispose();
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task Each_event_of_the_book_stands_in_it_with_its_place_in_the_chain()
    {
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        var newest = new Door(folder.Path, () => null!, TimeProvider.System).AllEvents()[^1];
        await Says($"event {newest.Number} at ", $"signed in: {Lead} signed in. [{newest.Chain}]");
    }

    [Fact]
    public async Task Strangers_wrong_secrets_and_too_many_knocks_stand_in_it_with_where_they_came_from()
    {
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        (await stranger.Names()).Dispose();
        await Says("refused 403: POST /api/door/names from 127.0.0.1");
        (await stranger.Enrol("AAAAA-AAAAA")).Dispose();
        await Says("refused 403: POST /api/door/enrol from 127.0.0.1");
        (await desk.SignIn(Lead, "no such passphrase at all")).Dispose();
        (await desk.SignIn(Lead, "no such passphrase at all")).Dispose();
        (await desk.SignIn(Lead, "the door waits for this one")).Dispose();
        await Says("refused 403: POST /api/door/sign-in from 127.0.0.1, Ines Tallow on d-desk");
        for (var knocks = 0; knocks < 70; knocks++)
            (await stranger.Post("/api/door/start")).Dispose();
        await Says("refused 429: POST /api/door/start from 127.0.0.1");
    }

    [Fact]
    public async Task Another_sites_page_stands_in_it_and_nothing_that_it_sent()
    {
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        using var request = new HttpRequestMessage(HttpMethod.Delete, "/api/machines/forged%0Aevent/owner");
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        using var answer = await desk.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        await Says("refused 403: DELETE /api/machines/{id}/owner from 127.0.0.1");
        Assert.DoesNotContain("forged", shop.Said, StringComparison.Ordinal);
    }

    private async Task Says(params string[] parts)
    {
        for (var waited = 0; waited < 100 && !Stand(); waited++)
            await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.True(Stand(), shop.Said);

        bool Stand() => shop.Said.Split('\n').Any(line => parts.All(p => line.Contains(p, StringComparison.Ordinal)));
    }
}
