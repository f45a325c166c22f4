using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;
using Witnessmark.Tests.Stock;

namespace Witnessmark.Tests.Times;

public sealed class TimesCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public TimesCommandTests() => DemoData.Into(Data);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Without_a_job_the_books_times_stand_as_the_guide_says()
    {
        var guide = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "times.md"));
        var ended = RealProgram.Run("", "times", "--data", Data);
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains(
            "$ witnessmark times --data data\n" + ended.Output.ReplaceLineEndings("\n"),
            guide.ReplaceLineEndings("\n")
        );
    }

    /// <summary>One doing of 8 min of a point of 4 min by the book: by hand exp((2·ln 4 + 0.8·ln 8)/2.8) = 4.9 min, and for her 5.4 min.</summary>
    [Fact]
    public void A_job_in_the_ledger_moves_them()
    {
        Keep(("09:00", null), ("09:08", "chain-slack"));
        Assert.Equal(
            "chain-slack  hands  4.9 min, the shop's of 1 doing, by the book 4.0 min",
            RealProgram.Run("", "times", "--data", Data).Output.Trim()
        );
        Assert.Equal(
            "chain-slack  hands  5.4 min, own of 1 doing, by the book 4.0 min",
            RealProgram.Run("", "times", "--data", Data, "--by", "Ines Tallow").Output.Trim()
        );
        var json = JsonDocument.Parse(RealProgram.Run("", "times", "--data", Data, "--json").Output).RootElement;
        var line = Assert.Single(json.GetProperty("times").EnumerateArray());
        Assert.Equal(
            ("chain-slack", "hands", "shop", 4.0),
            (
                line.GetProperty("point").GetString(),
                line.GetProperty("what").GetString(),
                line.GetProperty("from").GetString(),
                line.GetProperty("bookMinutes").GetDouble()
            )
        );
        var wrong = RealProgram.Run("", "times", "--data", Data, "--by", "Nobody");
        Assert.Equal((2, true), (wrong.ExitCode, wrong.Errors.Contains("one of Ines Tallow, Bram Okello is allowed")));
    }

    private string Data => Path.Combine(folder.Path, "data");

    private void Keep(params (string Time, string? Point)[] done)
    {
        List<Entry> entries = [];
        foreach (var (time, point) in done)
        {
            var draft = new EntryDraft(
                $"e{entries.Count}",
                "harrow-lane",
                "500",
                point is null ? EntryKind.Note : EntryKind.Mark,
                point is null ? EntryBody.Note(null, "began") : EntryBody.Mark(point),
                null,
                null,
                $"2026-11-25T{time}:00+00:00",
                "Ines Tallow"
            );
            entries.Add(Entries.Sealed(draft, "tablet", 1, entries.Count + 1, entries.LastOrDefault()?.Hash));
        }
        var receipt = SqliteLedger
            .Open(Data, TimeProvider.System)
            .Accept(new Batch("tablet", 1, [.. entries.Select(EntryJson.Write)]));
        Assert.Equal(entries.Count, receipt.UpTo);
    }
}
