using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Verify;

/// <summary><c>verify --json</c>: one object, whatever was found. The file is the example of docs/log-book.md.</summary>
public sealed partial class VerifyJsonTests : IDisposable
{
    private static readonly string Example = Block("log-book.md", "json");
    private readonly TempFolder folder = new();

    [Fact]
    public void The_guide_prints_what_the_program_prints()
    {
        var intact = Verify(Example);
        Assert.Equal((0, Block("command-line.md", "json intact"), ""), (intact.ExitCode, intact.Output, intact.Errors));
        var changed = Verify(Example.Replace("31 mm", "30 mm"));
        Assert.Equal(
            (1, Block("command-line.md", "json changed"), ""),
            (changed.ExitCode, changed.Output, changed.Errors)
        );
    }

    [Theory]
    [InlineData(0.5, "truncated", 1)]
    [InlineData(0, "unreadable", 2)]
    public void A_file_that_is_cut_is_told(double share, string verdict, int code)
    {
        var ended = Verify(Example[..(int)(Example.Length * share)]);
        Told(ended, verdict, code);
        Assert.Single(Json(ended).GetProperty("where").EnumerateArray());
    }

    [Fact]
    public void A_file_that_is_not_there_is_an_object_too()
    {
        var ended = RealProgram.Run("", "verify", Path.Combine(folder.Path, "nothing.json"), "--json");
        Told(ended, "unreadable", 2);
        Assert.Equal("", ended.Errors);
    }

    [Fact]
    public void A_ledger_tells_what_it_counted_and_each_fault()
    {
        Told(RealProgram.Run("", "verify", "--data", folder.Path, "--json"), "unreadable", 2);
        using (var ledger = Ledger.Sqlite.SqliteLedger.Open(folder.Path, TimeProvider.System))
            ledger.Accept(new("bench", 1, [.. Notes.Chain(3).Select(Bench.Record.EntryJson.Write)]));
        var whole = RealProgram.Run("", "verify", "--data", folder.Path, "--json");
        Told(whole, "intact", 0);
        Assert.Equal(3, Json(whole).GetProperty("entries").GetInt32());
        using (
            var connection = new Microsoft.Data.Sqlite.SqliteConnection(
                $"Data Source={Path.Combine(folder.Path, "ledger.db")}"
            )
        )
        {
            connection.Open();
            using var change = connection.CreateCommand();
            change.CommandText = "UPDATE entries SET Body = replace(Body, '24.4', '24.5') WHERE Seq = 2";
            change.ExecuteNonQuery();
        }
        var changed = RealProgram.Run("", "verify", "--data", folder.Path, "--json");
        Told(changed, "changed", 1);
        Assert.Contains("bench-2", Json(changed).GetProperty("where")[0].GetProperty("says").GetString());
    }

    public void Dispose() => folder.Dispose();

    private RealProgram.Ended Verify(string logBook)
    {
        var file = Path.Combine(folder.Path, "log-book.json");
        File.WriteAllText(file, logBook);
        return RealProgram.Run("", "verify", file, "--json");
    }

    private static void Told(RealProgram.Ended ended, string verdict, int code)
    {
        Assert.Equal(code, ended.ExitCode);
        Assert.Equal(verdict, Json(ended).GetProperty("verdict").GetString());
        Assert.Equal(code, Json(ended).GetProperty("exitCode").GetInt32());
    }

    private static JsonElement Json(RealProgram.Ended ended) => JsonDocument.Parse(ended.Output).RootElement;

    private static string Block(string page, string language) =>
        Fence()
            .Matches(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", page)))
            .Last(m => m.Groups[1].Value == language)
            .Groups[2]
            .Value;

    [GeneratedRegex("^```([^\n]+)\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
