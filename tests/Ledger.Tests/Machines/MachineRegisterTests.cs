using System.Text;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Ledger.Tests.Machines;

public sealed class MachineRegisterTests : IDisposable
{
    private const string Vin = "GZ0FE64C8RH000412";
    private readonly string folder = Directory.CreateTempSubdirectory("witnessmark-machines-").FullName;
    private readonly List<ImportedRow> said = [];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Of_each_row_is_said_what_became_of_it()
    {
        Import(Row("a", Vin), Row("b"), Row("a"), Row("c", Vin), null);
        Assert.Equal(
            [
                "1 a Taken ",
                "2 b Taken ",
                "3 a SetAside id: \"a\" stands on line 1 too",
                $"4 c SetAside vin: \"{Vin}\" is the number of \"a\" too",
                "5  SetAside torn",
            ],
            said.Select(s => $"{s.Line} {s.Id} {s.Outcome} {s.Why}")
        );
        Import(Row("a", Vin), Row("b", plate: "HL 7"), Row("c"));
        Assert.Equal([RowOutcome.Same, RowOutcome.Updated, RowOutcome.Taken], said.Select(s => s.Outcome));
    }

    [Fact]
    public void What_a_list_does_not_say_stays_and_distances_add_up()
    {
        Import(Row("a", Vin, "HL 1", km: 100, day: 1, owner: "Ada Brook"));
        Import(Row("a", km: 200, day: 2));
        Assert.Equal(RowOutcome.Updated, Assert.Single(said).Outcome);
        Import(Row("a", km: 200, day: 2));
        Assert.Equal(RowOutcome.Same, Assert.Single(said).Outcome);
        var found = Register.Machine("a")!;
        Assert.Equal((Vin, "HL 1", "Ada Brook"), (found.Machine.Vin, found.Machine.Plate, found.Owner!.Name));
        Assert.Equal([new(Day(1), 100), new(Day(2), 200)], found.Machine.Distances);
    }

    [Theory]
    [InlineData("0412")]
    [InlineData("hl-12")]
    [InlineData("l12")]
    [InlineData("ROOK")]
    [InlineData("0555 01")]
    public void A_machine_is_found_by_any_part_of_VIN_plate_or_owner(string text)
    {
        Import(Row("a", Vin, "HL 12", owner: "Ada Brook"), Row("b", "GZ0FE64C8RH000777", "HL 99", owner: "Bo Ley"));
        if (text == "0555 01")
            Assert.Equal(2, Register.Find(text)!.Machines.Count);
        else
            Assert.Equal("a", Assert.Single(Register.Find(text)!.Machines).Machine.Id);
    }

    [Theory]
    [InlineData("fell 640", "a b c")]
    [InlineData("FELL-640 20", "a b c")]
    [InlineData("tarnmoor fell 640 2023", "b")]
    [InlineData("2023 tarn", "b")]
    [InlineData("fell 777", "b")]
    [InlineData("640 hl 1", "a c")] // HL 1 is too short for the index: looked for among those with 640
    [InlineData("fell hl 9", "b")]
    [InlineData("brook ada", "a")]
    [InlineData("fell xyz", "")]
    public void Make_model_and_year_are_found_and_words_in_any_order(string text, string expected)
    {
        Import(
            Row("a", Vin, "HL 12", owner: "Ada Brook", make: "Tarnmoor", year: 2024),
            Row("b", "GZ0FE64C8RH000777", "HL 99", owner: "Bo Ley", make: "Tarnmoor", year: 2023),
            Row("c", plate: "HL 13", make: "Tarnmoor", year: 2024)
        );
        Assert.Equal(expected, string.Join(' ', Register.Find(text)!.Machines.Select(m => m.Machine.Id)));
    }

    [Fact]
    public void Of_too_many_with_one_word_a_short_one_may_be_missed_and_that_is_said()
    {
        Import([.. Enumerable.Range(0, 2001).Select(i => Row($"m{i}", plate: i == 2000 ? "ZZ" : "AA"))]);
        var found = Register.Find("fell zz")!;
        Assert.True(found.More);
        Assert.Empty(found.Machines);
        Assert.False(Register.Find("fell aa m1999")!.More);
    }

    [Fact]
    public void A_register_of_an_older_program_finds_models_too()
    {
        Import(Row("a", Vin, "HL 12", make: "Tarnmoor", year: 2024), Row("b"));
        var keys = Keys();
        Sql("UPDATE machine_find SET keys = 'A'; PRAGMA user_version = 1");
        Assert.Equal(2, Register.Find("fell")!.Machines.Count);
        Assert.Equal(keys, Keys());
    }

    [Fact]
    public void A_text_runs_over_no_border_and_a_machine_is_found_once()
    {
        Import(Row("brook1", Vin, "HL 12", owner: "Ada Brook"));
        Assert.Single(Register.Find("brook")!.Machines);
        Assert.Empty(Register.Find("412HL1")!.Machines);
        Assert.Empty(Register.Find("\" OR \"HL1\"")!.Machines);
    }

    [Theory]
    [InlineData("")]
    [InlineData("12")]
    [InlineData("1-2 ?")]
    public void Less_than_three_signs_are_not_looked_for(string text)
    {
        Import(Row("a", plate: "12"));
        Assert.Null(Register.Find(text));
    }

    [Theory]
    [InlineData(50, false)]
    [InlineData(51, true)]
    public void More_than_fifty_are_said_to_be_more(int count, bool more)
    {
        Import([.. Enumerable.Range(0, count).Select(i => Row($"m{i}", plate: "SAME"))]);
        var found = Register.Find("same")!;
        Assert.Equal((50, more), (found.Machines.Count, found.More));
    }

    [Fact]
    public void A_changed_plate_and_owner_are_found_and_the_old_ones_not()
    {
        Import(Row("a", plate: "OLD 1", owner: "Ada Brook"));
        Import(Row("a", plate: "NEW 1", owner: "Bo Ley"));
        Assert.Empty(Register.Find("OLD1")!.Machines);
        Assert.Empty(Register.Find("BROOK")!.Machines);
        Assert.Single(Register.Find("NEW1")!.Machines);
        Assert.Single(Register.Find("BOLEY")!.Machines);
    }

    [Fact]
    public void A_forgotten_owner_leaves_nothing_behind_and_the_record_stays()
    {
        Import(Row("a", Vin, km: 100, day: 1, owner: "Quillfeather Brook"), Row("b", owner: "Bo Ley"));
        Assert.Contains("Quillfeather", Bytes(), StringComparison.OrdinalIgnoreCase);
        Assert.True(Register.ForgetOwner("a"));
        Assert.DoesNotContain("Quillfeather", Bytes(), StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Register.Find("QUILL")!.Machines);
        var found = Register.Machine("a")!;
        Assert.Null(found.Owner);
        Assert.Equal((Vin, 1), (found.Machine.Vin, found.Machine.Distances.Count));
        Assert.Equal("Bo Ley", Register.Machine("b")!.Owner!.Name);
        Assert.False(Register.ForgetOwner("a"));
        Assert.Null(Register.ForgetOwner("nobody"));
    }

    [Fact]
    public void A_cancelled_import_leaves_everything_as_it_was()
    {
        Import(Row("a"));
        using var cancel = new CancellationTokenSource();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Register.Import([new(1, Row("b"), null, "")], _ => cancel.Cancel(), cancel.Token)
        );
        Assert.Null(Register.Machine("b"));
    }

    [Fact]
    public void A_newer_form_is_refused_and_left_alone()
    {
        Import(Row("a"));
        Sql("PRAGMA user_version = 3");
        Assert.Contains("newer Witnessmark (form 3", Assert.Throws<LedgerUnavailable>(() => Register).Message);
    }

    [Fact]
    public void Without_an_import_there_is_no_register()
    {
        Assert.Null(MachineRegister.OpenIfThere(folder));
        Import(Row("a"));
        Assert.NotNull(MachineRegister.OpenIfThere(folder));
    }

    // independent: every machine whose texts contain the piece, counted by hand over a list in memory
    [Fact]
    public void Whatever_four_signs_are_typed_the_find_agrees_with_a_plain_scan()
    {
        var chance = new Random(1);
        RegisterRow[] rows =
        [
            .. Enumerable
                .Range(0, 300)
                .Select(i => Row($"id{i}", plate: $"{(char)('A' + i % 26)}{chance.Next(1000, 9999)}")),
        ];
        Import(rows);
        foreach (var row in rows.Where((_, i) => i % 10 == 0))
        {
            var piece = row.Plate![^4..];
            var expected = rows.Where(r => r.Plate!.Contains(piece) || r.Id.ToUpperInvariant().Contains(piece));
            Assert.Equal(
                expected.Select(r => r.Id).Order(),
                Register.Find(piece)!.Machines.Select(m => m.Machine.Id).Order()
            );
        }
    }

    private MachineRegister Register => MachineRegister.Open(folder);

    private string StoreFile => Path.Combine(folder, MachineRegister.FileName);

    private string Bytes() =>
        string.Concat(Directory.GetFiles(folder).Select(f => Encoding.Latin1.GetString(File.ReadAllBytes(f))));

    private List<string> Keys()
    {
        using var connection = new SqliteConnection($"Data Source={StoreFile};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT keys FROM machine_find ORDER BY rowid";
        using var row = command.ExecuteReader();
        List<string> keys = [];
        while (row.Read())
            keys.Add(row.GetString(0));
        return keys;
    }

    private void Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={StoreFile};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private void Import(params RegisterRow?[] rows)
    {
        said.Clear();
        Register.Import(rows.Select((r, i) => new RowToImport(i + 1, r, r is null ? "torn" : null, "raw")), said.Add);
    }

    private static DateOnly Day(int day) => new(2026, 3, day);

    private static RegisterRow Row(
        string id,
        string? vin = null,
        string? plate = null,
        double? km = null,
        int day = 1,
        string? owner = null,
        string? make = null,
        int? year = null
    ) =>
        new(
            id,
            vin,
            null,
            plate,
            make,
            "Fell 640",
            year,
            null,
            km is { } shown ? new(Day(day), shown) : null,
            owner is null ? null : new(owner, "0555 010")
        );
}
