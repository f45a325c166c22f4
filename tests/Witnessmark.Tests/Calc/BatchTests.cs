using System.Text;
using System.Text.Json;
using Witnessmark.Calc;

namespace Witnessmark.Tests.Calc;

public class BatchTests
{
    private const string Vin = """{"id":1,"calculation":"vin","given":{"vin":"1M8GDM9AXKP042788"}}""";

    private static JsonElement[] Replies(params byte[][] lines)
    {
        using var input = new MemoryStream([.. lines.SelectMany(l => l.Append((byte)'\n'))]);
        using var output = new MemoryStream();
        Assert.Equal(ExitCode.Ok, Batch.Run(input, output));
        return
        [
            .. Encoding
                .UTF8.GetString(output.ToArray())
                .TrimEnd('\n')
                .Split('\n')
                .Select(l => JsonDocument.Parse(l).RootElement),
        ];
    }

    private static JsonElement[] Replies(params string[] lines) => Replies([.. lines.Select(Encoding.UTF8.GetBytes)]);

    [Theory]
    [InlineData("xx", "not JSON")]
    [InlineData("[1]", "an object with the keys id, calculation, given")]
    [InlineData("""{"id":2,"calculation":"vim","given":{}}""", "no calculation \"vim\"")]
    [InlineData("""{"id":2,"calculation":"vin","given":{},"more":1}""", "more: unknown key")]
    [InlineData("""{"calculation":"vin","given":{"vin":"1"}}""", "id: missing")]
    [InlineData("""{"id":2,"calculation":"vin","given":{"vin":"\ud800"}}""", "Unicode")]
    [InlineData("""{"id":2,"calculation":"vin","given":{"\ud800":1}}""", "Unicode")]
    public void A_broken_line_costs_only_its_own_reply(string broken, string told)
    {
        var replies = Replies(Vin, broken, Vin);
        Assert.Equal(3, replies.Length);
        Assert.Contains(told, replies[1].GetProperty("wrong").GetString());
        Assert.True(replies[2].GetProperty("gives").GetProperty("wellFormed").GetBoolean());
    }

    [Fact]
    public void Bytes_that_are_not_text_cost_only_their_own_reply()
    {
        byte[] broken =
        [
            .. Encoding.UTF8.GetBytes("{\"id\":2,\"calculation\":\"vin\",\"given\":{\"vin\":\""),
            0xFF,
            .. "\"}}"u8,
        ];
        var replies = Replies(broken, Encoding.UTF8.GetBytes(Vin));
        Assert.True(replies[0].TryGetProperty("wrong", out _));
        Assert.True(replies[1].TryGetProperty("gives", out _));
    }

    [Fact]
    public void A_refusal_and_any_kind_of_id_come_back()
    {
        var replies = Replies(
            """{"id":"a\"b","calculation":"tyre-date","given":{"code":"237","on":"2026-11-25"}}""",
            """{"id":null,"calculation":"vin","given":{"vin":"1"}}""",
            """{"given":{"vin":"1"},"calculation":"vin","id":12345678901234567890}"""
        );
        Assert.Equal("a\"b", replies[0].GetProperty("id").GetString());
        Assert.Equal("decadeUnknown", replies[0].GetProperty("refused").GetString());
        Assert.False(replies[0].TryGetProperty("gives", out _));
        Assert.Equal("12345678901234567890", replies[2].GetProperty("id").GetRawText());
    }

    [Fact]
    public void Empty_lines_and_a_last_line_without_a_feed_are_no_trouble()
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes($"\r\n  \n{Vin}\r\n\n{Vin}"));
        using var output = new MemoryStream();
        Batch.Run(input, output);
        Assert.Equal(
            2,
            Encoding.UTF8.GetString(output.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length
        );
    }

    [Fact]
    public void Lines_longer_than_the_buffer_and_split_anywhere_are_joined()
    {
        var many = string.Join(',', Enumerable.Repeat("\"25 mm\"", 9_000));
        var line =
            """{"id":7,"calculation":"reading","given":{"values":[MANY],"instrument":{"resolution":"1 mm","permissibleError":"0 mm"}}}""".Replace(
                "MANY",
                many
            );
        var replies = Replies(line, Vin, line);
        Assert.Equal([7, 1, 7], replies.Select(r => r.GetProperty("id").GetInt32()));
        Assert.Equal(25, replies[2].GetProperty("gives").GetProperty("value").GetProperty("value").GetDouble());
    }

    [Fact]
    public async Task The_real_program_replies_while_its_input_stays_open()
    {
        using var process = RealProgram.Start("calc", "stream");
        for (var i = 0; i < 3; i++)
        {
            await process.StandardInput.WriteLineAsync(Vin);
            await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
            var reply = await process
                .StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken)
                .AsTask()
                .WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
            Assert.Contains("\"wellFormed\":true", reply);
        }
        process.StandardInput.Close();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(ExitCode.Ok, process.ExitCode);
    }
}
