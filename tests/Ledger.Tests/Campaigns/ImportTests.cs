using System.Text;
using Witnessmark.Bench.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

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
}
