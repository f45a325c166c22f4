using System.Net;
using System.Net.Http.Json;
using System.Security.Cryptography;
using System.Text.Json;
using Witnessmark.Bench.Photographs;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Photographs;

public sealed class PhotographsEndpointTests : IDisposable
{
    private readonly TempFolder folder = new();

    private string Stored => Path.Combine(folder.Path, "photographs");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_picture_is_kept_once_and_given_back_as_it_was_and_survives_a_power_cut()
    {
        using (var shop = RunningShop.Serve(folder.Path))
        {
            Assert.Equal(HttpStatusCode.Created, (await Put(shop, TinyPicture.Sha256, TinyPicture.Plain)).Status);
            Assert.Equal(HttpStatusCode.OK, (await Put(shop, TinyPicture.Sha256, TinyPicture.Plain)).Status);
            shop.Kill();
        }
        Assert.Equal($"{TinyPicture.Sha256}.jpg", Path.GetFileName(Assert.Single(Directory.GetFiles(Stored))));
        using var again = RunningShop.Serve(folder.Path);
        using var answer = await again.Client.GetAsync($"/api/photographs/{TinyPicture.Sha256}");
        Assert.Equal("image/jpeg", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal(TinyPicture.Plain, await answer.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Many_devices_may_send_the_same_at_the_same_time()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var all = await Task.WhenAll(
            Enumerable.Range(0, 8).Select(_ => Put(shop, TinyPicture.Sha256, TinyPicture.Plain))
        );
        Assert.All(all, a => Assert.True(a.Status is HttpStatusCode.OK or HttpStatusCode.Created, a.Error));
        Assert.Single(Directory.GetFiles(Stored));
    }

    [Fact]
    public async Task What_is_no_plain_picture_of_that_hash_is_refused_and_nothing_is_kept()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var tooMuch = new byte[Picture.MostBytes + 1];
        TinyPicture.Plain.CopyTo(tooMuch, 0);
        (HttpStatusCode, string, byte[], string)[] refused =
        [
            (HttpStatusCode.BadRequest, "latest", TinyPicture.Plain, "64 digits of lower-case hex"),
            (HttpStatusCode.BadRequest, TinyPicture.Sha256.ToUpperInvariant(), TinyPicture.Plain, "lower-case hex"),
            (HttpStatusCode.BadRequest, "..%2f..%2fshop.toml", TinyPicture.Plain, "64 digits"),
            (HttpStatusCode.Conflict, new string('0', 64), TinyPicture.Plain, "changed on the way"),
            (HttpStatusCode.Conflict, TinyPicture.Sha256, TinyPicture.Plain[..^1], "changed on the way"),
            (HttpStatusCode.BadRequest, Of("GIF89a"u8), "GIF89a"u8.ToArray(), "not a JPEG"),
            (HttpStatusCode.BadRequest, Of(TinyPicture.Plain[..^2]), TinyPicture.Plain[..^2], "cut off"),
            (HttpStatusCode.BadRequest, Of(TinyPicture.WithPlace), TinyPicture.WithPlace, "carries more than itself"),
            (HttpStatusCode.BadRequest, Of(Wide()), Wide(), "1601 × 12 pixels"),
            (HttpStatusCode.RequestEntityTooLarge, Of(tooMuch), tooMuch, $"{Picture.MostBytes} bytes"),
        ];
        foreach (var (status, name, file, said) in refused)
        {
            var answer = await Put(shop, name, file);
            Assert.Equal(status, answer.Status);
            Assert.Contains(said, answer.Error, StringComparison.Ordinal);
        }
        Assert.False(Directory.Exists(Stored));
    }

    [Fact]
    public async Task What_is_longer_than_allowed_is_refused_when_its_length_was_not_said_before()
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var body = new StreamContent(new Unsized(Picture.MostBytes + 1));
        using var request = new HttpRequestMessage(HttpMethod.Put, $"/api/photographs/{TinyPicture.Sha256}");
        request.Content = body;
        request.Headers.TransferEncodingChunked = true;
        using var answer = await shop.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.False(Directory.Exists(Stored));
    }

    [Theory]
    [InlineData("0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("shop.toml")]
    public async Task What_the_shop_does_not_have_is_told(string name)
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var answer = await shop.Client.GetAsync($"/api/photographs/{name}");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task<(HttpStatusCode Status, string Error)> Put(RunningShop shop, string name, byte[] file)
    {
        using var body = new ByteArrayContent(file);
        body.Headers.ContentType = new(Picture.MediaType);
        using var answer = await shop.Client.PutAsync($"/api/photographs/{name}", body);
        return answer.IsSuccessStatusCode
            ? (answer.StatusCode, "")
            : (
                answer.StatusCode,
                (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("error").GetString()!
            );
    }

    private static string Of(ReadOnlySpan<byte> file) => Convert.ToHexStringLower(SHA256.HashData(file));

    /// <summary>The same picture that says it is one pixel too wide.</summary>
    private static byte[] Wide()
    {
        byte[] size = [0, 12, 0, 16];
        var file = TinyPicture.Plain.ToArray();
        var at = file.AsSpan().IndexOf(size);
        (file[at + 2], file[at + 3]) = (1601 >> 8, 1601 & 0xFF);
        return file;
    }

    /// <summary>Bytes whose number nobody knows before.</summary>
    private sealed class Unsized(long length) : MemoryStream(new byte[length])
    {
        public override bool CanSeek => false;
    }
}
