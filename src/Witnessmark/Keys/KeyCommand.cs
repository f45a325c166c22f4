using System.CommandLine;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Keys;

/// <summary><c>witnessmark key show|trust</c>: what this workshop signs with, and whose signatures it knows.</summary>
internal static class KeyCommand
{
    public static Command Create() =>
        new("key", "The workshop's key, and the keys of others that it knows.") { Show(), Trust() };

    private static Command Show()
    {
        var data = new Option<string?>("--data") { Description = "the workshop's data folder" };
        var group = GroupOption.Create();
        var show = new Command("show", "Print this workshop's public key, to be given to others. Made on first use.")
        {
            data,
            group,
        };
        show.SetAction(parsed =>
            Said(() =>
            {
                var key = OwnKey(parsed.GetValue(data), group.Of(parsed)).Seal.Key;
                Console.Error.WriteLine($"Key {key.Id}");
                Console.Out.Write(KeyFolder.JsonText(key));
            })
        );
        return show;
    }

    private static ShopKey OwnKey(string? data, GroupFile? group)
    {
        if (data is null == group is null)
            throw new FormatException(
                "Name the data folder with --data, or the shop of a group with --group: one of the two."
            );
        if (data is not null)
            return KeyFolder.ShopKey(data);
        using var shop = GroupShop.Open(group!.Connection, TimeProvider.System);
        return GroupPlace.SigningKey(shop, group.OpensSecrets);
    }

    private static Command Trust()
    {
        var data = DataOption();
        var file = new Argument<string>("FILE") { Description = "a workshop's public key (JWK), got from itself" };
        var name = new Option<string>("--as") { Description = "the name to know it by", Required = true };
        var trust = new Command(
            "trust",
            "Know a workshop's key from now on. Make sure by another way that it is theirs."
        )
        {
            file,
            name,
            data,
        };
        trust.SetAction(parsed =>
            Said(() =>
            {
                var known = parsed.GetValue(name)!;
                if (known.Length == 0 || known.Any(c => !char.IsLetterOrDigit(c) && c is not ('-' or ' ')))
                    throw new FormatException(
                        $"\"{known}\" is no name for a key: letters, digits, spaces and hyphens are allowed."
                    );
                var id = KeyFolder.Trust(parsed.GetValue(data)!, parsed.GetValue(file)!, known);
                Console.Out.WriteLine($"Key {id} is known as \"{known}\".");
            })
        );
        return trust;
    }

    private static Option<string> DataOption() =>
        new("--data") { Description = "the workshop's data folder", Required = true };

    private static int Said(Action work)
    {
        try
        {
            work();
            return 0;
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(wrong.Message);
            return ExitCode.Malformed;
        }
    }
}
