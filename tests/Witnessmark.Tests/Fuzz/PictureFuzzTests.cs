using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using Witnessmark.Photographs;
using Witnessmark.Tests.Photographs;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Fuzz;

/// <summary>Pictures that are spoilt and sent under the right hash, at the real server; and what paper makes of those that it kept.</summary>
public sealed class PictureFuzzTests : IDisposable
{
    private const int Seed = 20261130;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_spoilt_picture_is_refused_or_kept_whole_and_never_brings_anything_down()
    {
        var ends = new SortedDictionary<string, int>(StringComparer.Ordinal);
        using var shop = RunningShop.Serve(folder.Path);
        var spoil = new Mutations(Seed);
        for (var i = 0; i < Tries.Of(600); i++)
        {
            var picture = spoil.Of(TinyPicture.Plain);
            var name = Convert.ToHexStringLower(SHA256.HashData(picture));
            using var body = new ByteArrayContent(picture);
            body.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
            using var answer = await shop.Client.PutAsync($"/api/photographs/{name}", body, Stop);
            var status = (int)answer.StatusCode;
            Assert.True(status is 200 or 201 or 400, $"try {i}: {status}");
            var key = status.ToString(CultureInfo.InvariantCulture);
            ends[key] = ends.GetValueOrDefault(key) + 1;
            using var back = await shop.Client.GetAsync($"/api/photographs/{name}", Stop);
            Assert.Equal(status == 400 ? HttpStatusCode.NotFound : HttpStatusCode.OK, back.StatusCode);
            if (status == 400)
                continue;
            Assert.Equal(picture, await back.Content.ReadAsByteArrayAsync(Stop));
            Assert.NotEmpty(SmallPicture.Of(picture));
        }
        Tries.Tell("pictures", Seed, ends);
        Assert.True(
            ends.GetValueOrDefault("201") > 10 && ends["400"] > 10,
            "Hardly anything was kept, or hardly anything refused."
        );
        Assert.Empty(Directory.GetFiles(Path.Combine(folder.Path, "photographs"), "*.new"));
    }
}
