using System.Net.Http.Json;
using System.Text.Json;

namespace Witnessmark.Tests.Serve;

/// <summary>What the shop refuses or warns of stands on a screen: it is said in the language of whoever reads it there.</summary>
public sealed class RefusalTongueTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    // RFC 9110, 12.5.4: the weights decide, and of equals the first
    [Theory]
    [InlineData(null, "", "nothing was moved")]
    [InlineData("de", "", "nichts wurde bewegt")]
    [InlineData("de-AT", "", "nichts wurde bewegt")]
    [InlineData("en-GB, de;q=0.5", "", "nothing was moved")]
    [InlineData("en;q=0.4, de;q=0.9", "", "nichts wurde bewegt")]
    [InlineData("fr, de;q=0.3", "", "nichts wurde bewegt")]
    [InlineData("de;q=0", "", "nothing was moved")]
    [InlineData("sv", "", "nothing was moved")]
    [InlineData("de", "?language=en", "nothing was moved")]
    public async Task A_refusal_is_said_in_the_language_that_is_asked_for(string? accepted, string query, string says)
    {
        using var shop = RunningShop.Serve(folder.Path);
        Assert.Contains(says, await Refused(shop, accepted, query, "receive", "0"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_with_an_amount_is_said_whole_in_one_language()
    {
        using var shop = RunningShop.Serve(folder.Path);
        Assert.Equal(
            "„viel“ ist keine Menge von Stripe paint; richtig wäre eine ganze Zahl, etwa „3“.",
            await Refused(shop, "de", "", "receive", "viel")
        );
    }

    [Fact]
    public async Task A_warning_of_the_shelf_is_said_in_the_language_too()
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var taken = await Move(shop, "de", "", "use", "1");
        taken.EnsureSuccessStatusCode();
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/api/stock?find=stripe-paint");
        asked.Headers.Add("Accept-Language", "de");
        using var answer = await shop.Client.SendAsync(asked, TestContext.Current.CancellationToken);
        var shelf = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("was da ist", shelf, StringComparison.Ordinal);
        Assert.DoesNotContain("Count what is there", shelf, StringComparison.Ordinal);
    }

    private static async Task<string?> Refused(
        RunningShop shop,
        string? accepted,
        string query,
        string kind,
        string amount
    )
    {
        using var answer = await Move(shop, accepted, query, kind, amount);
        Assert.False(answer.IsSuccessStatusCode);
        var body = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        return body.GetProperty("error").GetString();
    }

    private static async Task<HttpResponseMessage> Move(
        RunningShop shop,
        string? accepted,
        string query,
        string kind,
        string amount
    )
    {
        using var asked = new HttpRequestMessage(HttpMethod.Post, $"/api/stock/moves{query}")
        {
            Content = JsonContent.Create(
                new
                {
                    id = "m1",
                    kind,
                    item = "stripe-paint",
                    amount,
                    by = "Ines Tallow",
                    job = "412",
                }
            ),
        };
        if (accepted is not null)
            asked.Headers.Add("Accept-Language", accepted);
        return await shop.Client.SendAsync(asked, TestContext.Current.CancellationToken);
    }
}
