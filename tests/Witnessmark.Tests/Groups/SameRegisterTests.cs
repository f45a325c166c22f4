using System.Text.Json;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: the register in SQLite, whose rules have tests of their own: whatever lists come, both stores say and find the same.
[Collection(StoreCollection.Name)]
public sealed class SameRegisterTests(StoreFixture fixture)
{
    private static readonly string[] Asked =
    [
        "fell",
        "fell 640",
        "640 hl 1",
        "tarn 2023",
        "brook",
        "ada brook",
        "GZ0FE64C8RH00041",
        "hl-1",
        "\" OR \"",
        "% _",
        "fell xyz",
        "0555",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Whatever_lists_come_both_say_keep_and_find_the_same(int seed)
    {
        using var shop = new GroupFolder($"register_{seed}", fixture.Store);
        using var folder = new TempFolder();
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        var file = MachineRegister.Open(folder.Path);
        Assert.True(store.Register.IsEmpty);
        var chance = new Random(seed);
        var outcomes = new HashSet<RowOutcome>();
        for (var list = 0; list < 8; list++)
        {
            RowToImport[] rows = [.. Enumerable.Range(1, 25).Select(line => Drawn(line, chance))];
            var here = Taken(file, rows);
            Assert.Equal(here, Taken(store.Register, rows));
            var again = Taken(file, rows);
            Assert.Equal(again, Taken(store.Register, rows));
            outcomes.UnionWith(here.Concat(again).Select(o => o.Outcome));
            var forgotten = $"m{chance.Next(20)}";
            Assert.Equal(file.ForgetOwner(forgotten), store.Register.ForgetOwner(forgotten));
            foreach (var text in Asked)
                Assert.Equal(Text(file.Find(text)), Text(store.Register.Find(text)));
        }
        Assert.Equal(4, outcomes.Count); // each can come, or the test proves little
        Assert.NotEmpty(file.Find("brook")!.Machines);
        for (var id = 0; id < 20; id++)
            Assert.Equal(Text(file.Machine($"m{id}")), Text(store.Register.Machine($"m{id}")));
        Assert.False(store.Register.IsEmpty);
    }

    // the store is asked and written part by part: what one part wrote the next one meets
    [Fact]
    public void Lists_of_more_rows_than_are_looked_ahead_say_and_keep_the_same_too()
    {
        using var shop = new GroupFolder("register_long", fixture.Store);
        using var folder = new TempFolder();
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        var file = MachineRegister.Open(folder.Path);
        var chance = new Random(3);
        const int many = 3000;
        for (var list = 0; list < 2; list++)
        {
            RowToImport[] rows = [.. Enumerable.Range(1, 3 * many).Select(line => Drawn(line, chance, many))];
            Assert.Equal(Taken(file, rows), Taken(store.Register, rows));
        }
        for (var id = 0; id < many; id += 7)
            Assert.Equal(Text(file.Machine($"m{id}")), Text(store.Register.Machine($"m{id}")));
        foreach (var text in Asked)
            Assert.Equal(Text(file.Find(text)), Text(store.Register.Find(text)));
    }

    [Fact]
    public void A_list_that_is_stopped_leaves_everything_as_it_was()
    {
        using var shop = new GroupFolder("register_stopped", fixture.Store);
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        using var stop = new CancellationTokenSource();
        IEnumerable<RowToImport> Rows()
        {
            yield return Row(1, "m1", "HL 1", null);
            stop.Cancel();
        }
        Assert.Throws<OperationCanceledException>(() => store.Register.Import(Rows(), _ => { }, stop.Token));
        Assert.True(store.Register.IsEmpty);
    }

    [Fact]
    public void A_forgotten_owner_is_in_no_row_of_the_store()
    {
        using var shop = new GroupFolder("register_forgotten", fixture.Store);
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        store.Register.Import([Row(1, "m1", "HL 1", "Ada Brook")], _ => { }, TestContext.Current.CancellationToken);
        Assert.Equal("2", Owners("register_forgotten"));
        Assert.True(store.Register.ForgetOwner("m1"));
        Assert.Equal("0", Owners("register_forgotten"));
        Assert.Equal("HL 1", store.Register.Machine("m1")!.Machine.Plate);
        Assert.False(store.Register.ForgetOwner("m1"));
        Assert.Null(store.Register.ForgetOwner("m2"));
    }

    private string? Owners(string shop) =>
        fixture.Store.Value(
            $"SELECT (SELECT count(*) FROM shop_{shop}.owner) + (SELECT count(*) FROM shop_{shop}.owner_find WHERE keys LIKE '%BROOK%')"
        );

    private static List<ImportedRow> Taken(MachineRegister register, IEnumerable<RowToImport> rows)
    {
        List<ImportedRow> said = [];
        register.Import(rows, said.Add);
        return said;
    }

    // few ids, numbers and plates, so that rows meet: the same machine again, the number of another, a row that says less
    private static RowToImport Drawn(int line, Random chance, int many = 20)
    {
        string? Maybe(string text) => chance.Next(3) == 0 ? null : text;
        return chance.Next(12) == 0
            ? new(line, null, "torn", "raw")
            : new(
                line,
                new(
                    $"m{chance.Next(many)}",
                    Maybe($"GZ0FE64C8RH{410 + chance.Next(many / 2):000000}"),
                    Maybe($"F-{chance.Next(9)}"),
                    Maybe($"HL {chance.Next(20)}"),
                    Maybe("Tarnmoor"),
                    chance.Next(2) == 0 ? "Fell 640" : "Rook 125",
                    chance.Next(3) == 0 ? null : 2020 + chance.Next(5),
                    Maybe("fell-640"),
                    chance.Next(2) == 0 ? null : new(new(2026, 3, 1 + chance.Next(3)), chance.Next(4) * 100.5),
                    chance.Next(2) == 0 ? null : new(chance.Next(2) == 0 ? "Ada Brook" : "Bo Ley", "0555 01")
                ),
                null,
                "raw"
            );
    }

    private static RowToImport Row(int line, string id, string plate, string? owner) =>
        new(
            line,
            new(id, null, null, plate, null, "Fell 640", null, null, null, owner is null ? null : new(owner, "")),
            null,
            ""
        );

    private static string Text(object? found) => JsonSerializer.Serialize(found);
}
