using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Stock;

public sealed partial class StockCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public StockCommandTests() => DemoData.Into(Data);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_examples_of_the_guide_run_as_they_stand_there()
    {
        var examples = Console().Matches(Guide).ToList();
        Assert.Equal(9, examples.Count);
        foreach (var example in examples)
        {
            var refused = example.Groups[1].Value == "refused";
            var ended = Run(example.Groups[2].Value.Replace("--data data", "").Trim());
            Assert.Equal(refused ? 3 : 0, ended.ExitCode);
            Assert.Equal(
                example.Groups[3].Value.TrimEnd(),
                (refused ? ended.Errors : ended.Output).ReplaceLineEndings("\n").TrimEnd()
            );
        }
    }

    [Theory]
    [InlineData("stock receive oil-10w-4 1 --by \"Ines Tallow\"", "right would be \"oil-10w-40\"")]
    [InlineData("stock receive oil-10w-40 1 --by \"Ines Tallow\"", "right would be one of 4 L, 1 L")]
    [InlineData("stock receive crush-washer-14 1.5 --by \"Ines Tallow\"", "counted in pieces")]
    [InlineData("stock receive crush-washer-14 1 --by Nobody", "one of Ines Tallow, Bram Okello is allowed")]
    public void What_cannot_be_read_is_told_with_what_is_allowed(string asked, string says)
    {
        var ended = Run(asked);
        Assert.Equal((2, true), (ended.ExitCode, ended.Errors.Contains(says)));
        Assert.False(File.Exists(Path.Combine(Data, "stock.db")));
    }

    [Theory]
    [InlineData("stock use crush-washer-14 1 --by \"Ines Tallow\"", "job: it is missing")]
    [InlineData("stock discard crush-washer-14 1 --by \"Ines Tallow\"", "why: a reason is missing")]
    public void What_the_shelf_will_not_take_is_refused(string asked, string says)
    {
        var ended = Run(asked);
        Assert.Equal((3, true), (ended.ExitCode, ended.Errors.Contains(says)));
    }

    [Fact]
    public void A_folder_without_a_workshop_has_no_shelf()
    {
        Directory.Delete(Data, true);
        Assert.Equal(2, Run("stock show").ExitCode);
    }

    [Fact]
    public void As_JSON_everything_is_told()
    {
        var moved = Json("stock receive oil-10w-40 3 --size 1L --batch \"lot 7\" --by \"Ines Tallow\" --json");
        Assert.Equal(
            ("oil-10w-40", "1 L", "lot 7", 3),
            (
                moved.GetProperty("item").GetString(),
                moved.GetProperty("line").GetProperty("size").GetString(),
                moved.GetProperty("line").GetProperty("batch").GetString(),
                moved.GetProperty("line").GetProperty("there").GetInt32()
            )
        );
        var shown = Json("stock show rack --json");
        Assert.Equal(
            ["oil-10w-40", "oil-filter-640", "brake-fluid-dot-4"],
            shown.GetProperty("items").EnumerateArray().Select(i => i.GetProperty("item").GetString())
        );
        var order = Json("stock reorder --json").GetProperty("toOrder").EnumerateArray().ToArray();
        Assert.Equal(
            ("oil-filter-640", 5),
            (order[0].GetProperty("item").GetString(), order[0].GetProperty("leadDays").GetInt32())
        );
        Assert.Contains(
            "stripe-paint  Stripe paint  none on record, ordered at 1  4 days",
            Run("stock reorder").Output
        );
        Assert.Contains("Nothing on the shelf has that in it.", Run("stock show zebra").Output);
    }

    [Fact]
    public async Task The_server_tells_what_is_there_takes_moves_once_and_says_no()
    {
        using var shop = RunningShop.Serve(Data);
        var move = new
        {
            id = "a",
            kind = "receive",
            item = "oil-10w-40",
            amount = "6",
            by = "Ines Tallow",
            size = "1 L",
        };
        foreach (var before in new[] { false, true })
        {
            using var answer = await shop.Client.PostAsync("/api/stock/moves", JsonContent(move), Cancel);
            var said = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Cancel)).RootElement;
            Assert.Equal(before, said.GetProperty("before").GetBoolean());
            Assert.Equal(6, said.GetProperty("line").GetProperty("there").GetInt32());
        }
        var stock = await shop.Get("/api/stock?find=oil-10w");
        Assert.Equal(
            "oil-10w-40",
            Assert.Single(stock.GetProperty("items").EnumerateArray()).GetProperty("item").GetString()
        );
        foreach (
            var (asked, status, says) in new (object, int, string)[]
            {
                (move with { id = "b", kind = "take" }, 400, "kind"),
                (move with { id = "b", kind = "use" }, 409, "job: it is missing"),
                (move with { id = "b", amount = new string('9', 201) }, 400, "longer than 200"),
                (new { }, 400, "id: it is missing"),
            }
        )
        {
            using var answer = await shop.Client.PostAsync("/api/stock/moves", JsonContent(asked), Cancel);
            Assert.Equal(status, (int)answer.StatusCode);
            Assert.Contains(says, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        }
        using var broken = await shop.Client.PostAsync("/api/stock/moves", new StringContent("{"), Cancel);
        Assert.InRange((int)broken.StatusCode, 400, 415);
        using var late = await shop.Client.GetAsync("/api/stock?find=" + new string('x', 201), Cancel);
        Assert.Equal(400, (int)late.StatusCode);
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static StringContent JsonContent(object body) =>
        new(JsonSerializer.Serialize(body), System.Text.Encoding.UTF8, "application/json");

    private string Data => Path.Combine(folder.Path, "data");

    private static string Guide =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "stock.md")).ReplaceLineEndings("\n");

    private RealProgram.Ended Run(string words) =>
        RealProgram.Run("", [.. Word().Matches(words).Select(w => w.Value.Trim('"')), "--data", Data]);

    private JsonElement Json(string words) => JsonDocument.Parse(Run(words).Output).RootElement;

    // each command with what it answers; several may stand in one block
    [GeneratedRegex(
        "(?<=^```(console|refused)\n(?:(?!```).*\n)*)\\$ witnessmark ([^\n]*)\n((?:(?!\\$ |```)[^\n]*\n)*)",
        RegexOptions.Multiline
    )]
    private static partial Regex Console();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
