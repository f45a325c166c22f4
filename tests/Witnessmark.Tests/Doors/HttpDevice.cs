using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

/// <summary>A device that speaks to a running shop, with a jar of cookies of its own as a browser has one.</summary>
internal sealed class HttpDevice(RunningShop shop, string id) : IDisposable
{
    private readonly TestDevice key = new(id);

    public HttpClient Client { get; } = new() { BaseAddress = shop.Client.BaseAddress };

    public string Id => id;

    public async Task<HttpResponseMessage> Close(string lead, string secret) =>
        await Client.PostAsJsonAsync("/api/door/close", Described(new() { ["lead"] = lead, ["secret"] = secret }));

    public async Task<HttpResponseMessage> Enrol(string code)
    {
        var nonce = await Nonce();
        return await Client.PostAsJsonAsync(
            "/api/door/enrol",
            Described(
                new()
                {
                    ["code"] = code,
                    ["nonce"] = nonce,
                    ["signature"] = key.Sign("enrol", nonce),
                }
            )
        );
    }

    public Task<HttpResponseMessage> SignIn(string person, string secret) =>
        Shown("sign-in", "sign in", person, ("secret", secret));

    public Task<HttpResponseMessage> Start(string person, string code, string secret) =>
        Shown("start", "start", person, ("code", code), ("secret", secret));

    public Task<HttpResponseMessage> Names() => Shown("names", "names", "");

    public Task<HttpResponseMessage> Post(string path, object? body = null) =>
        Client.PostAsJsonAsync(path, body ?? new { });

    public static async Task<string> Said(
        HttpResponseMessage answer,
        string name,
        HttpStatusCode status = HttpStatusCode.OK
    )
    {
        Assert.Equal(status, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty(name).GetString()!;
    }

    public void Dispose()
    {
        Client.Dispose();
        key.Dispose();
    }

    private async Task<HttpResponseMessage> Shown(
        string path,
        string deed,
        string person,
        params (string Name, string Value)[] more
    )
    {
        var nonce = await Nonce();
        var body = new Dictionary<string, object>
        {
            ["device"] = id,
            ["nonce"] = nonce,
            ["signature"] = key.Sign(deed, nonce, person),
            ["person"] = person,
        };
        foreach (var (name, value) in more)
            body[name] = value;
        return await Client.PostAsJsonAsync($"/api/door/{path}", body);
    }

    private async Task<string> Nonce() =>
        (await Client.GetFromJsonAsync<JsonElement>("/api/door")).GetProperty("nonce").GetString()!;

    private Dictionary<string, object> Described(Dictionary<string, object> body)
    {
        body["device"] = id;
        body["label"] = $"Tablet {id}";
        body["x"] = key.X;
        body["y"] = key.Y;
        body["shared"] = true;
        return body;
    }
}
