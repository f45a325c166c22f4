using System.IO.Compression;
using System.Net;
using System.Text;

namespace Witnessmark.Tests.Serve;

// Source: RFC 9110, HTTP Semantics: 8.8.3 (entity tags), 13.1.2 and 15.4.5 (If-None-Match, 304), 12.5.3 and 12.5.5 (Accept-Encoding, Vary).
public sealed class WorkbenchReplyTests : IDisposable
{
    private const string Path = "/api/workbench";
    private readonly TempFolder folder = new();
    private readonly RunningShop shop;

    public WorkbenchReplyTests() => shop = RunningShop.Serve(folder.Path);

    public void Dispose()
    {
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task Who_has_the_files_as_they_are_is_told_so_and_gets_no_more()
    {
        var tag = await Tag();
        using var again = await Ask(("If-None-Match", tag));
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
        Assert.Empty(await again.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        using var other = await Ask(("If-None-Match", "\"another\""));
        Assert.Equal(HttpStatusCode.OK, other.StatusCode);
    }

    [Fact]
    public async Task Files_that_changed_have_another_tag()
    {
        var tag = await Tag();
        using (
            var set = await FiguresEndpointTests.Put(shop, "chain.slack", FiguresEndpointTests.Slack(4, "15 to 30 mm"))
        )
            Assert.True(set.IsSuccessStatusCode);
        Assert.NotEqual(tag, await Tag());
        using var news = await Ask(("If-None-Match", tag));
        Assert.Equal(HttpStatusCode.OK, news.StatusCode);
    }

    [Theory]
    [InlineData(Path)]
    [InlineData("/api/entries?after=0")]
    public async Task The_large_answers_go_out_compressed_where_that_is_taken(string path)
    {
        using var packed = await Ask(path, ("Accept-Encoding", "br"));
        Assert.Equal(["br"], packed.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", packed.Headers.Vary);
        await using var body = await packed.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);
        await using var unpacked = new BrotliStream(body, CompressionMode.Decompress);
        using var reader = new StreamReader(unpacked, Encoding.UTF8);
        using var plain = await Ask(path, ("Accept-Encoding", "identity"));
        Assert.Empty(plain.Content.Headers.ContentEncoding);
        Assert.Equal(
            await plain.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            await reader.ReadToEndAsync(TestContext.Current.CancellationToken)
        );
    }

    private async Task<string> Tag()
    {
        using var answer = await Ask();
        return answer.Headers.ETag!.ToString();
    }

    private Task<HttpResponseMessage> Ask(params (string Name, string Value)[] headers) => Ask(Path, headers);

    private async Task<HttpResponseMessage> Ask(string path, params (string Name, string Value)[] headers)
    {
        using var question = new HttpRequestMessage(HttpMethod.Get, path);
        foreach (var (name, value) in headers)
            question.Headers.Add(name, value);
        return await shop.Client.SendAsync(question, TestContext.Current.CancellationToken);
    }
}
