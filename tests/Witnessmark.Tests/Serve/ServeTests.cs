using System.Net;
using System.Text;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Tests.Serve;

public sealed class ServeTests(ServeTests.OneShop one) : IClassFixture<ServeTests.OneShop>
{
    [Fact]
    public async Task Its_health_is_told() =>
        Assert.Equal("""{"ok":true}""", await one.Shop.Client.GetStringAsync("/api/health"));

    [Fact]
    public async Task The_workbench_that_it_serves_can_be_read_and_the_demo_job_opens_with_it()
    {
        var served = await one.Shop.Get("/api/workbench");
        var files = served.GetProperty("files").EnumerateArray();
        var (bench, mistakes) = WorkbenchFiles.Read(
            files.Select(f => new SourceText(f.GetProperty("name").GetString()!, f.GetProperty("text").GetString()!))
        );
        Assert.Empty(mistakes);
        var page = await one.Shop.Get("/api/entries?after=0");
        Assert.Equal(served.GetProperty("ledger").GetString(), page.GetProperty("ledger").GetString());
        var entry = EntryJson.Read(page.GetProperty("entries")[0].GetProperty("entry"));
        var state = JobFold.Of("412", [entry], bench!);
        Assert.Empty(state.NotUnderstood);
        Assert.NotEmpty(state.Points);
    }

    [Fact]
    public async Task Every_answer_carries_the_headers_that_keep_pages_safe()
    {
        using var response = await one.Shop.Client.GetAsync("/api/health");
        var headers = response.Headers;
        var policy = string.Join("", headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self' 'wasm-unsafe-eval';", policy);
        Assert.Contains("frame-ancestors 'none'", policy);
        Assert.DoesNotContain("unsafe-inline", policy);
        Assert.Equal("nosniff", headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", headers.GetValues("Referrer-Policy").Single());
        Assert.Equal("no-store", headers.CacheControl!.ToString());
        Assert.False(headers.Contains("Server"));
    }

    // OWASP ASVS 5.0, 4.1.1: text says its charset
    [Theory]
    [InlineData("/", "text/html; charset=utf-8")]
    [InlineData("/figures/fell-640/chain.slack", "text/html; charset=utf-8")]
    [InlineData("/device.js", "text/javascript; charset=utf-8")]
    [InlineData("/css/base.css", "text/css; charset=utf-8")]
    [InlineData("/icon.svg", "image/svg+xml; charset=utf-8")]
    public async Task Text_says_in_which_signs_it_is(string path, string type)
    {
        using var response = await one.Shop.Client.GetAsync(path);
        Assert.Equal(type, response.Content.Headers.ContentType!.ToString());
    }

    [Theory]
    [InlineData("/api/nothing")]
    [InlineData("/api/jobs/412/nothing.pdf")]
    [InlineData("/api")]
    public async Task An_unknown_path_of_the_API_is_not_the_first_page(string path)
    {
        using var response = await one.Shop.Client.GetAsync(path);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Equal("""{"error":"There is nothing here."}""", await response.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("x", 400, "The request is no JSON")]
    [InlineData("[]", 400, "A batch is an object")]
    [InlineData("""{"protocol":2}""", 400, "protocol 1")]
    [InlineData("""{"protocol":1,"device":""}""", 400, "device")]
    [InlineData("""{"protocol":1,"device":"b","epoch":0}""", 400, "epoch")]
    [InlineData("""{"protocol":1,"device":"b","epoch":1,"entries":{}}""", 400, "entries")]
    public async Task A_broken_envelope_is_answered_with_the_reason(string body, int status, string says)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var response = await one.Shop.Client.PostAsync("/api/entries", content);
        Assert.Equal(status, (int)response.StatusCode);
        Assert.Contains(says, await response.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task More_than_two_hundred_entries_or_four_megabytes_are_too_much_at_once()
    {
        using var many = await one.Shop.Post(Notes.Chain(201));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, many.StatusCode);
        using var content = new StringContent($"\"{new string('x', 5_000_000)}\"", Encoding.UTF8, "application/json");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/entries") { Content = content };
        request.Headers.ExpectContinue = true; // the answer comes before the body is sent
        using var large = await one.Shop.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
    }

    [Fact]
    public async Task A_form_of_another_site_cannot_post()
    {
        using var content = new StringContent("{}", Encoding.UTF8, "text/plain");
        using var response = await one.Shop.Client.PostAsync("/api/entries", content);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("x")]
    public async Task After_must_be_a_number(string after)
    {
        using var response = await one.Shop.Client.GetAsync($"/api/entries?after={after}");
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task What_is_set_aside_is_reported_with_its_number_and_the_rest_is_taken_in()
    {
        using var folder = new TempFolder();
        using var shop = RunningShop.Serve(folder.Path);
        var chain = Notes.Chain(3);
        using var response = await shop.Post(chain[0], chain[1] with { By = "Bram Okello" }, chain[2]);
        using var receipt = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
        Assert.Equal(3, receipt.RootElement.GetProperty("upTo").GetInt32());
        var aside = Assert.Single(receipt.RootElement.GetProperty("setAside").EnumerateArray());
        Assert.Equal(("bench-2", 2), (aside.GetProperty("id").GetString(), aside.GetProperty("seq").GetInt32()));
        Assert.Equal(["demo-412", "bench-1", "bench-3"], await shop.Ids());
    }

    [Fact]
    public async Task A_ledger_that_cannot_be_written_acknowledges_nothing_and_tells_no_insides()
    {
        using var folder = new TempFolder();
        using var shop = RunningShop.Serve(folder.Path);
        Sql(folder.Path, "ALTER TABLE job_heads RENAME TO elsewhere");
        using var response = await shop.Post(Notes.Chain(2));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, response.StatusCode);
        var said = await response.Content.ReadAsStringAsync();
        Assert.Contains("keep it and send it again", said);
        Assert.DoesNotContain("job_heads", said);
        Assert.DoesNotContain("upTo", said);
        Sql(folder.Path, "ALTER TABLE elsewhere RENAME TO job_heads");
        Assert.Equal(["demo-412"], await shop.Ids());
    }

    [Fact]
    public void Every_mistake_in_the_files_is_said_and_nothing_starts()
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "shop.toml"), "[workshop]\nname = 7\n");
        using var process = RunningShop.Start("serve", "--port", "0", "--data", folder.Path);
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(2, process.ExitCode);
        Assert.Contains("shop.toml:2:", errors);
        Assert.Contains("mend them and start again", errors);
        Assert.False(File.Exists(Path.Combine(folder.Path, "ledger.db")));
    }

    private static void Sql(string folder, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "ledger.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public sealed class OneShop : IDisposable
    {
        private readonly TempFolder _folder = new();

        public OneShop() => Shop = RunningShop.Serve(_folder.Path);

        internal RunningShop Shop { get; }

        public void Dispose()
        {
            Shop.Dispose();
            _folder.Dispose();
        }
    }
}
