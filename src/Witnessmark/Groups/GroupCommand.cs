using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Groups;

/// <summary><c>witnessmark group add|restored|upgrade</c>: shops in the store of a group.</summary>
public static class GroupCommand
{
    /// <summary>The command.</summary>
    public static Command Create() =>
        new(
            "group",
            "A group of shops in one PostgreSQL: add a shop; go on after a dump was restored; bring its tables up to date."
        )
        {
            Add(),
            Restored(),
            Upgrade(),
        };

    private static Command Add()
    {
        var group = GroupOption.Create();
        group.Description =
            $"file with a \"connection\" that may make roles and schemas; without FILE its text is in {GroupFile.Variable}";
        group.Required = true;
        var shop = new Argument<string>("SHOP") { Description = "its name: small letters, digits, underscores" };
        var to = new Option<string>("--to")
        {
            Description = "file that is written for the servers of the shop, with its password and its key",
            Required = true,
        };
        var add = new Command("add", "Add a shop with nothing in it. The first one makes the tables.")
        {
            shop,
            group,
            to,
        };
        add.SetAction(parsed =>
            Said(() =>
            {
                var name = ShopName.Of(parsed.GetRequiredValue(shop));
                var file = parsed.GetRequiredValue(to);
                if (File.Exists(file))
                    throw new IOException($"{file} is there already; nothing is written over.");
                GroupFile.New(GroupAdmin.Add(group.Of(parsed)!.Connection, name)).Write(file);
                Console.Out.WriteLine(
                    $"The shop \"{name}\" is in the store. Its servers take {file}; keep a copy of it where the store's backups are not."
                );
            })
        );
        return add;
    }

    private static Command Restored()
    {
        var group = GroupOption.Create();
        group.Required = true;
        var restored = new Command(
            "restored",
            "After a dump was restored: gives the shop's ledger a new identity, so that every device sends again what it has."
        )
        {
            group,
        };
        restored.SetAction(parsed =>
            Said(() =>
            {
                using var shop = GroupShop.Open(group.Of(parsed)!.Connection, TimeProvider.System);
                shop.Rename(TimeProvider.System);
                Console.Out.WriteLine(
                    $"The ledger of \"{shop.Name}\" has a new identity: every device sends again what it has. Start its servers anew."
                );
            })
        );
        return restored;
    }

    private static Command Upgrade()
    {
        var group = GroupOption.Create();
        group.Description =
            $"file with a \"connection\" that may change the tables; without FILE its text is in {GroupFile.Variable}";
        group.Required = true;
        var upgrade = new Command(
            "upgrade",
            "After a newer program was put in place: makes the tables that the store lacks, for all of its shops. What is in it stays."
        )
        {
            group,
        };
        upgrade.SetAction(parsed =>
            Said(() =>
                Console.Out.WriteLine(
                    GroupAdmin.Upgrade(group.Of(parsed)!.Connection)
                        ? "The store is up to date now. Start the servers of its shops anew, with this program."
                        : "The store is up to date already."
                )
            )
        );
        return upgrade;
    }

    private static int Said(Action work)
    {
        try
        {
            work();
            return ExitCode.Ok;
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }
}
