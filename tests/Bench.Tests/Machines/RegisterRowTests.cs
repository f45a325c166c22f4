using FsCheck.Xunit;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Tests.Machines;

public class RegisterRowTests
{
    private static readonly DateOnly Today = new(2026, 3, 2);
    private static readonly string[] Head =
    [
        "id",
        "vin",
        "frame",
        "plate",
        "make",
        "name",
        "year",
        "sheet",
        "distance-km",
        "distance-on",
        "owner",
        "contact",
    ];

    [Fact]
    public void A_whole_row()
    {
        var (row, why) = Read(
            ("vin", " gz0fe64c8rh000412 "),
            ("plate", "HL 412"),
            ("make", "Tarnmoor"),
            ("year", "2024"),
            ("sheet", "fell-640"),
            ("distance-km", "12400.5"),
            ("distance-on", "2026-03-02"),
            ("owner", "Ada Brook"),
            ("contact", "0555 010 020")
        );
        Assert.Null(why);
        Assert.Equal(
            new(
                "m-1",
                "GZ0FE64C8RH000412",
                null,
                "HL 412",
                "Tarnmoor",
                "Fell 640",
                2024,
                "fell-640",
                new(Today, 12_400.5),
                new("Ada Brook", "0555 010 020")
            ),
            row
        );
    }

    [Fact]
    public void What_the_row_does_not_say_is_nothing()
    {
        var (row, _) = Read();
        Assert.Equal(new("m-1", null, null, null, null, "Fell 640", null, null, null, null), row);
    }

    [Theory]
    [InlineData("id", "", "id: nothing stands there")]
    [InlineData("id", "a/b", "id: \"a/b\"; up to 60 letters")]
    [InlineData("id", "..", "id: \"..\"; up to 60 letters")]
    [InlineData("name", " ", "name: nothing stands there")]
    [InlineData("name", "Fell\u0007", "name: a character that cannot be printed")]
    [InlineData("name", "Fell\uD800", "name: a character that cannot be printed")]
    [InlineData("vin", "FR-1932-77", "vin: \"FR-1932-77\" (10 signs); 17 digits")]
    [InlineData("vin", "GZ0FE64C8RH00041O", "(17 signs)")]
    [InlineData("year", "24", "year: \"24\"; a year from 1885 to 2027 is allowed")]
    [InlineData("year", "1884", "year: \"1884\"")]
    [InlineData("year", "2028", "year: \"2028\"")]
    [InlineData("year", "-2024", "year: \"-2024\"")]
    [InlineData("distance-km", "12,400", "distance-km: \"12,400\" is no number")]
    [InlineData("distance-km", "-5", "distance-km: \"-5\" is no number")]
    [InlineData("distance-km", "NaN", "distance-km: \"NaN\" is no number")]
    [InlineData("distance-km", "∞", "distance-km: \"∞\" is no number")]
    [InlineData("distance-km", ".", "distance-km: \".\" is no number")]
    [InlineData("distance-km", "10000000.1", "at most 10000000 km are allowed")]
    [InlineData("distance-km", "", "a distance and its day need each other")]
    [InlineData("distance-on", "", "a distance and its day need each other")]
    [InlineData("distance-on", "02.03.2026", "distance-on: \"02.03.2026\" is no day written yyyy-MM-dd")]
    [InlineData("distance-on", "2026-03-03", "distance-on: \"2026-03-03\" lies after today")]
    [InlineData("owner", "", "contact: stands without an owner")]
    public void A_row_that_is_set_aside_says_why(string key, string text, string says)
    {
        var (row, why) = Read(
            ("distance-km", "100"),
            ("distance-on", "2026-03-01"),
            ("owner", "Ada Brook"),
            ("contact", "0555"),
            (key, text)
        );
        Assert.Null(row);
        Assert.Contains(says, why);
    }

    [Theory]
    [InlineData("year", "1885")]
    [InlineData("year", "2027")]
    [InlineData("distance-km", "0")]
    [InlineData("distance-km", "10000000")]
    [InlineData("distance-on", "2026-03-02")]
    public void What_is_just_allowed_is_taken(string key, string text) =>
        Assert.Null(Read(("distance-km", "100"), ("distance-on", "2026-03-01"), (key, text)).Why);

    [Theory]
    [InlineData("name", 200)]
    [InlineData("id", 60)]
    public void Texts_have_a_longest_length(string key, int longest)
    {
        Assert.Null(Read((key, new('x', longest))).Why);
        Assert.Contains("allowed", Read((key, new('x', longest + 1))).Why);
    }

    [Fact]
    public void A_frame_number_is_no_VIN_and_tells_a_machine_apart()
    {
        var (columns, _) = RegisterColumns.ByName(["frame", "vin", "name"]);
        Assert.Equal(
            ("fr193277", "FR-1932/77"),
            RegisterRow.Read(columns!, ["FR-1932/77", "", "Fell"], Today).Row is { } row ? (row.Id, row.Frame) : default
        );
        Assert.Equal(
            "gz0fe64c8rh000412",
            RegisterRow.Read(columns!, ["FR-1932/77", "GZ0FE64C8RH000412", "Fell"], Today).Row!.Id
        );
        Assert.Equal(
            "neither VIN nor frame number tells which machine it is",
            RegisterRow.Read(columns!, ["--", "", "Fell"], Today).Why
        );
    }

    // 1 mi = 1.609344 km exactly (international yard and pound agreement, 1959)
    [Fact]
    public void Miles_are_kept_as_kilometres()
    {
        var (columns, _) = RegisterColumns.ByName(["id", "name", "distance-mi", "distance-on"]);
        var (row, _) = RegisterRow.Read(columns!, ["1", "Fell", "1000", "2026-03-01"], Today);
        Assert.Equal(1609.344, row!.Distance!.Value.Kilometres, 9);
        Assert.Contains(
            "distance-mi: \"6213712\"; at most",
            RegisterRow.Read(columns!, ["1", "Fell", "6213712", "2026-03-01"], Today).Why
        );
    }

    [Theory]
    [InlineData(11)]
    [InlineData(13)]
    public void A_row_with_too_few_or_too_many_fields(int count)
    {
        var (columns, _) = RegisterColumns.ByName(Head);
        Assert.Equal(
            $"{count} fields; the head line has 12",
            RegisterRow.Read(columns!, [.. Enumerable.Repeat("1", count)], Today).Why
        );
    }

    [Property(MaxTest = 300)]
    public void Any_row_is_taken_or_set_aside_with_a_reason(string?[] fields)
    {
        var (columns, _) = RegisterColumns.ByName(Head);
        var (row, why) = RegisterRow.Read(
            columns!,
            [.. Enumerable.Range(0, Head.Length).Select(i => i < fields.Length ? fields[i] ?? "" : "")],
            Today
        );
        Assert.Equal(row is null, !string.IsNullOrEmpty(why));
    }

    private static (RegisterRow? Row, string? Why) Read(params (string Key, string Text)[] fields)
    {
        var (columns, _) = RegisterColumns.ByName(Head);
        var said = new Dictionary<string, string> { ["id"] = "m-1", ["name"] = "Fell 640" };
        foreach (var (key, text) in fields)
            said[key] = text;
        return RegisterRow.Read(columns!, [.. Head.Select(h => said.GetValueOrDefault(h, ""))], Today);
    }
}
