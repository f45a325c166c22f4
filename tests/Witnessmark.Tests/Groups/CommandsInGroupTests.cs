using Witnessmark.Bench.Jobs;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: the same commands in a data folder, which have tests of their own: of a shop that is in the store they say the same.
[Collection(StoreCollection.Name)]
public sealed class CommandsInGroupTests(StoreFixture fixture)
{
    private static readonly string Demo = Path.Combine(AppContext.BaseDirectory, "demo");

    [Fact]
    public void A_sheet_that_was_taken_in_is_in_the_store_and_in_no_file_and_its_mistakes_keep_it_out()
    {
        using var shop = new GroupFolder("sheeted", fixture.Store);
        var sheet = shop.In("fell-640.toml");
        var text = File.ReadAllText(Path.Combine(Demo, "sheets", "fell-640.toml"));
        File.WriteAllText(sheet, text.Replace("2 to 4 mm", "4 to 2 mm"));
        Assert.Contains("the ends are swapped", Import(shop, sheet).Says);
        File.WriteAllText(sheet, text.Replace("2 to 4 mm", "2 to 5 mm"));
        Assert.Contains("taken in as revision 5", Import(shop, sheet).Says);
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        var kept = Assert.Single(store.Sheets.All());
        Assert.Equal(("fell-640", 5), (kept.Sheet, kept.Revision));
        Assert.Contains("2 to 5 mm", kept.Text);
        Assert.Equal(text, File.ReadAllText(Path.Combine(shop.Files, "sheets", "fell-640.toml")));
    }

    private static (int Exit, string Says) Import(GroupFolder shop, string sheet) =>
        GroupFolder.Run([
            "sheets",
            "import",
            sheet,
            "--by",
            "Ines Tallow",
            "--why",
            "x",
            "--data",
            shop.Files,
            "--group",
            shop.Group,
        ]);

    [Fact]
    public void They_say_of_the_store_what_they_say_of_a_data_folder()
    {
        using var shop = new GroupFolder("commanded", fixture.Store);
        using var folder = new TempFolder();
        DemoShop.Fill(new(folder.Path), AppContext.BaseDirectory);
        var bench = WorkbenchFiles.Read(new DataFolder(folder.Path).Workbench()).Bench!;
        using (var store = GroupShop.Open(shop.Connection, TimeProvider.System))
            DemoShop.OpenFirstJob(store.Ledger, bench, TimeProvider.System);
        using (var ledger = SqliteLedger.Open(folder.Path, TimeProvider.System))
            DemoShop.OpenFirstJob(ledger, bench, TimeProvider.System);
        var list = shop.In("machines.csv");
        File.WriteAllText(list, "id,name,plate,owner\nm1,Fell 640,HL 1,Ada Brook\n");
        var recalls = Path.Combine(Demo, "campaigns", "recalls.tsv");
        var bulletins = Path.Combine(Demo, "campaigns", "bulletins.toml");
        var sheet = shop.In("fell-640.toml");
        File.WriteAllText(
            sheet,
            File.ReadAllText(Path.Combine(Demo, "sheets", "fell-640.toml")).Replace("2 to 4 mm", "2 to 5 mm")
        );
        string[][] commands =
        [
            ["machines", "import", list],
            ["machines", "find", "brook"],
            ["machines", "find", "fell", "--json"],
            ["machines", "forget-owner", "m1"],
            ["machines", "find", "brook"],
            ["campaigns", "import", recalls],
            ["campaigns", "import", bulletins],
            ["campaigns", "withdraw", "TW-31", "--because", "x", "--by", "Ines Tallow"],
            ["campaigns", "for", "--make", "Tarnmoor", "--model", "Fell 640", "--year", "2024"],
            ["stock", "receive", "split-pin-4", "3", "--by", "Ines Tallow"],
            ["stock", "show", "split"],
            ["stock", "reorder"],
            ["sheets", "import", sheet, "--by", "Ines Tallow", "--why", "second edition"],
            ["sheets", "import", sheet, "--by", "Ines Tallow", "--why", "second edition"], // nothing new
            ["sheets", "export", "fell-640"],
            ["sheets", "export", "fell-640", "--revision", "4"],
            ["times"],
            ["plan", Path.Combine(Demo, "jobs", "412.toml")],
        ];
        foreach (var command in commands)
        {
            var here = GroupFolder.Run([.. command, "--data", folder.Path]);
            string[] files = command[0] is "stock" or "times" or "sheets" ? ["--data", shop.Files] : [];
            Assert.Equal(
                (command[0], here),
                (command[0], GroupFolder.Run([.. command, .. files, "--group", shop.Group]))
            );
            Assert.Equal(0, here.Exit);
        }
        var day = GroupFolder.Run("day", folder.Path, "--at", "2026-11-26T08:00", "--seconds", "1");
        Assert.Contains("412", day.Says);
        Assert.Equal(
            day,
            GroupFolder.Run("day", shop.Files, "--at", "2026-11-26T08:00", "--seconds", "1", "--group", shop.Group)
        );
        Assert.Contains(
            "--group goes with the folder",
            GroupFolder.Run("day", Path.Combine(Demo, "day.toml"), "--group", shop.Group).Says
        );
        Assert.Contains(
            "There is no file",
            GroupFolder.Run("machines", "find", "brook", "--group", shop.In("nowhere.json")).Says
        );
    }
}
