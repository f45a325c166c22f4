using System.Text;
using FsCheck.Xunit;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Ledger.Tests.Campaigns;

public class ImportTests
{
    private static readonly AskedMachine Fell = new("Tarnmoor", "Fell 640", 2024);

    [Fact]
    public void Every_row_is_counted_once()
    {
        using var kept = new Kept();
        var totals = kept.Import(Row(), Row(), Row("26X-005"), "torn", "", Row(year: "99"));
        Assert.Equal(new(Rows: 5, New: 2, Updated: 0, Unchanged: 0, Duplicates: 1, SetAside: 2), totals);
        Assert.Equal(
            [
                (4, "1 fields; 22 to 29 are allowed", "torn"),
                (6, "YEARTXT is \"99\"; allowed: a year from 1885 to 2100, or 9999 for unknown", Row(year: "99")),
            ],
            kept.Aside
        );
        totals = kept.Import(Row(defect: "It leaks more."), Row("26X-005"), Row("26X-006"));
        Assert.Equal(new(Rows: 3, New: 1, Updated: 1, Unchanged: 1, Duplicates: 0, SetAside: 0), totals);
        Assert.Equal(
            ["It leaks more.", "It leaks.", "It leaks."],
            kept.Store.Of(Fell).OrderBy(c => c.Number).Select(c => c.Says.Defect)
        );
        Assert.Equal(["2"], kept.Query("SELECT CAST(count(*) AS TEXT) FROM says"));
    }

    // RECORD_ID is counted anew each time the file is made; RCL_CMPT_ID came with 24 fields; spelling changes between makings
    [Fact]
    public void A_later_making_of_the_file_in_another_layout_doubles_nothing()
    {
        using var kept = new Kept();
        kept.Import(Row(record: "1", fields: 22));
        var totals = kept.Import(Row(record: "77", component: "7001", make: "Tarn-moor", model: "Fell640"));
        Assert.Equal((0, 1, 0), (totals.New, totals.Updated, totals.Unchanged));
        totals = kept.Import(Row(record: "78", component: "7002"));
        Assert.Equal((0, 0, 1), (totals.New, totals.Updated, totals.Unchanged));
        Assert.Single(kept.Store.Of(Fell));
    }

    [Theory]
    [InlineData("number")]
    [InlineData("make")]
    [InlineData("model")]
    [InlineData("year")]
    [InlineData("part")]
    public void Each_part_of_the_key_makes_another_record(string part)
    {
        using var kept = new Kept();
        var other = part switch
        {
            "number" => Row("26X-005"),
            "make" => Row(make: "GRITSTONE"),
            "model" => Row(model: "FELL 640 R"),
            "year" => Row(year: "9999"),
            _ => Row(part: "SIDE STAND"),
        };
        Assert.Equal(2, kept.Import(Row(), other).New);
        Assert.Equal(2, kept.Dump().Count);
    }

    // the louder of two contradicting rows of one file stays, then the later recorded one
    [Theory]
    [InlineData("No", "20260101", "Yes", "20250101", true)]
    [InlineData("Yes", "20250101", "No", "20260101", false)]
    [InlineData("No", "20250101", "No", "20260101", true)]
    [InlineData("No", "20260101", "No", "19010101", false)]
    public void Of_rows_that_contradict_each_other_one_stays_whatever_their_order(
        string ride,
        string day,
        string otherRide,
        string otherDay,
        bool other
    )
    {
        var (one, two) = (
            Row(defect: "one", ride: ride, recorded: day),
            Row(defect: "two", ride: otherRide, recorded: otherDay)
        );
        foreach (var rows in new[] { new[] { one, two }, [two, one], [two, one, two, one] })
        {
            using var kept = new Kept();
            Assert.Equal((1, rows.Length - 1), (kept.Import(rows).New, (int)kept.Import(rows).Duplicates));
            Assert.Equal(other ? "two" : "one", Assert.Single(kept.Store.Of(Fell)).Says.Defect);
            Assert.Equal(["1"], kept.Query("SELECT CAST(count(*) AS TEXT) FROM says"));
        }
    }

    [Property(MaxTest = 30)]
    public void Importing_again_changes_nothing_and_the_order_of_rows_does_not_matter(int seed)
    {
        var chance = new Random(seed);
        var lines = Lines(seed, 60).Concat(Contradicting(chance)).ToArray();
        using var kept = new Kept();
        var first = kept.Import(lines);
        var dump = kept.Dump();
        Assert.Equal(first.New, dump.Count);
        Assert.Equal(first.Rows, first.New + first.Duplicates + first.SetAside);
        Assert.Equal(first with { New = 0, Unchanged = first.New }, kept.Import(lines));
        Assert.Equal(dump, kept.Dump());
        chance.Shuffle(lines);
        Assert.Equal(first with { New = 0, Unchanged = first.New }, kept.Import(lines));
        using var shuffled = new Kept();
        Assert.Equal(first, shuffled.Import(lines));
        Assert.Equal(dump, shuffled.Dump());
    }

    // over an older store, too, neither counts nor contents hang on the order
    [Property(MaxTest = 20)]
    public void An_update_does_not_hang_on_the_order_either(int seed)
    {
        var chance = new Random(seed);
        var (before, after) = (Contradicting(chance), Contradicting(chance));
        using var one = new Kept();
        using var two = new Kept();
        one.Import(before);
        two.Import(before);
        var totals = one.Import(after);
        chance.Shuffle(after);
        Assert.Equal(totals, two.Import(after));
        Assert.Equal(one.Dump(), two.Dump());
        Assert.Equal(
            one.Query("SELECT hex(digest) FROM says ORDER BY 1"),
            two.Query("SELECT hex(digest) FROM says ORDER BY 1")
        );
    }

    [Fact]
    public void A_cancelled_import_leaves_everything_as_it_was()
    {
        using var kept = new Kept();
        kept.Import(Row());
        var before = kept.Dump();
        using var cancel = new CancellationTokenSource();
        var file = Encoding.Latin1.GetBytes(string.Join('\n', Lines(1, 10_000)));
        Assert.ThrowsAny<OperationCanceledException>(() =>
            kept.Import(
                file,
                cancel.Token,
                progress =>
                {
                    if (progress.Rows > 5000)
                        cancel.Cancel();
                }
            )
        );
        Assert.Equal(before, kept.Dump());
        Assert.Equal(1, Assert.Single(kept.Store.Lists()).Rows);
        Assert.True(kept.Import(file).New > 5000);
    }

    [Fact]
    public void An_import_that_breaks_leaves_everything_as_it_was()
    {
        using var kept = new Kept();
        kept.Import(Row());
        using var torn = new TornStream(Encoding.Latin1.GetBytes(Row("26X-005") + "\n"));
        Assert.Throws<IOException>(() => kept.Store.ImportPublic(torn, "recalls.txt", Kept.Noon, _ => { }));
        Assert.Single(kept.Dump());
    }

    [Fact]
    public void Progress_ends_at_the_whole_file()
    {
        using var kept = new Kept();
        List<ImportProgress> said = [];
        var file = Encoding.Latin1.GetBytes(string.Join('\n', Lines(2, 9000)));
        kept.Import(file, progress: said.Add);
        Assert.Equal(new(9000, file.Length, file.Length), said[^1]);
        Assert.True(said.Count >= 4);
        Assert.Equal(said.OrderBy(p => p.Bytes), said);
    }

    [Fact]
    public void Byte_order_mark_line_ends_and_an_open_end_are_no_matter()
    {
        using var kept = new Kept();
        byte[] file =
        [
            .. Encoding.UTF8.GetPreamble(),
            .. Encoding.UTF8.GetBytes(Row("A") + "\r\n\r\n\n" + Row("B") + "\n" + Row("C")),
        ];
        Assert.Equal(new(3, 3, 0, 0, 0, 0), kept.Import(file));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(300_000)]
    [InlineData(2_000_000)]
    public void A_line_longer_than_any_row_is_set_aside_by_its_beginning(int more)
    {
        using var kept = new Kept();
        var length = RecallRow.LongestLine + more;
        Assert.Equal(new(3, 2, 0, 0, 0, 1), kept.Import(Row("A"), new string('x', length), Row("B")));
        var (line, why, text) = Assert.Single(kept.Aside);
        Assert.Equal((2, $"a line of {length} bytes; at most {RecallRow.LongestLine} are allowed"), (line, why));
        Assert.InRange(text.Length, RecallRow.LongestLine, length);
    }

    [Fact]
    public void A_newer_form_is_refused_and_left_alone()
    {
        using var kept = new Kept();
        kept.Import(Row());
        kept.Sql("PRAGMA user_version = 2");
        Assert.Contains(
            "newer Witnessmark (form 2, this one knows up to 1)",
            Assert.Throws<LedgerUnavailable>(() => kept.Store).Message
        );
        Assert.Single(kept.Dump());
    }

    [Fact]
    public void A_file_that_is_no_store_is_said_to_be_none()
    {
        using var kept = new Kept();
        File.WriteAllText(Path.Combine(kept.Folder, CampaignStore.FileName), new string('x', 5000));
        Assert.Throws<LedgerUnavailable>(() => kept.Store);
    }

    internal static string Row(
        string number = "26X-004",
        string make = "TARNMOOR",
        string model = "FELL 640",
        string year = "2024",
        string part = "FUEL TANK",
        string defect = "It leaks.",
        string ride = "No",
        string recorded = "20260610",
        string record = "1",
        string component = "",
        int fields = 29
    ) =>
        string.Join(
            '\t',
            new[]
            {
                record,
                number,
                make,
                model,
                year,
                "",
                part,
                "Works",
                "",
                "",
                "V",
                "",
                "",
                "MFR",
                "Works",
                recorded,
                "",
                "",
                "",
                defect,
                "It burns.",
                "Replace it.",
                "",
                component,
                "",
                "",
                "",
                ride,
                "No",
            }.Take(fields)
        );

    private static string[] Lines(int seed, int rows)
    {
        using var file = new MemoryStream();
        new InventedRecalls(seed).Write(file, rows);
        return Encoding.Latin1.GetString(file.ToArray()).TrimEnd('\n').Split('\n');
    }

    /// <summary>Few keys, several spellings, texts, flags and days for each.</summary>
    private static string[] Contradicting(Random chance) =>
        [
            .. Enumerable
                .Range(0, 30)
                .Select(_ =>
                    Row(
                        number: $"26X-{chance.Next(3)}",
                        model: new[] { "FELL 640", "Fell-640", "fell640" }[chance.Next(3)],
                        defect: $"text {chance.Next(4)}",
                        ride: chance.Next(5) == 0 ? "Yes" : "No",
                        recorded: chance.Next(3) == 0 ? "19010101" : $"2026010{chance.Next(1, 4)}"
                    )
                ),
        ];

    /// <summary>Fails after its bytes, as a network share that went away.</summary>
    private sealed class TornStream(byte[] bytes) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) =>
            Position < Length ? base.Read(buffer, offset, count) : throw new IOException("gone");
    }
}
