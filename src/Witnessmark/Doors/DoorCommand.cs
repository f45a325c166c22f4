using System.CommandLine;
using Witnessmark.Bench.Jobs;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Serve;

namespace Witnessmark.Doors;

/// <summary><c>witnessmark door</c>: the shop's door, from the computer that holds the data.</summary>
public static class DoorCommand
{
    private const string AtTheComputer = "at the shop's computer";

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "data folder of the shop; it may be served meanwhile",
            DefaultValueFactory = _ => "data",
            Recursive = true,
        };
        var group = GroupOption.Create(recursive: true);
        var lead = new Option<string>("--lead") { Description = "one of the leads in shop.toml", Required = true };
        var close = new Command(
            "close",
            "Close the door: from now on everybody signs in. Asks for the lead's passphrase."
        )
        {
            lead,
        };
        var name = new Argument<string>("name") { Description = "one of the people in shop.toml" };
        var start = new Command("start", "Give a person a code by which they choose a new secret.") { name };
        var device = new Argument<string>("device")
        {
            Description = "the device's name in entries, as the book has it",
        };
        var shut = new Command("shut-out", "Shut a device out, and whoever is signed in on it.") { device };
        var code = new Command("code", "Give a code that lets one device in.");
        var book = new Command(
            "book",
            "Who may come in, with which devices, and what happened. Ends with 1 when events were changed."
        );
        var json = new Option<bool>("--json") { Description = "all of it as JSON, every event that there ever was" };
        book.Add(json);
        close.SetAction(p =>
            Run(p, data, group, door => Close(door, p.GetRequiredValue(lead), HiddenLine.Read, Console.Out))
        );
        start.SetAction(p =>
            Run(p, data, group, door => Said(door.StartCode(p.GetRequiredValue(name), AtTheComputer)))
        );
        shut.SetAction(p =>
            Run(
                p,
                data,
                group,
                door =>
                    Said(door.ShutOut(p.GetRequiredValue(device), AtTheComputer), gone => $"{gone.Label} is shut out.")
            )
        );
        code.SetAction(p => Run(p, data, group, door => Code(door)));
        book.SetAction(p =>
            Run(
                p,
                data,
                group,
                door => p.GetValue(json) ? BookJson.Write(door, Console.Out) : BookText.Write(door, Console.Out)
            )
        );
        return new Command("door", "Who may come in: close the door, let devices and people in, read its book.")
        {
            data,
            group,
            close,
            code,
            start,
            shut,
            book,
        };
    }

    /// <summary>Closes the door with the passphrase that is read.</summary>
    internal static int Close(Door door, string lead, Func<string?> read, TextWriter output)
    {
        output.WriteLine($"A passphrase for {lead}, at least {SecretRules.ShortestPassphrase} characters:");
        var closed = door.Close(lead, read() ?? "");
        return closed.No is { } no
            ? Refused(no)
            : Told(output, $"The door is closed. Let a first device in: witnessmark door code");
    }

    private static int Code(Door door) =>
        door.IsClosed
            ? Told(Console.Out, $"{door.DeviceCode(AtTheComputer)}  lets one device in, within 15 minutes.")
            : Refused("The door is open: there is nobody to let in. witnessmark door close comes first.");

    private static int Said(Answered<string> code) =>
        Said(code, given => $"{given}  opens the first sign-in, within 24 hours.");

    private static int Said<T>(Answered<T> done, Func<T, string> says)
        where T : class => done.No is { } no ? Refused(no) : Told(Console.Out, says(done.Yes!));

    private static int Run(ParseResult parsed, Option<string> data, GroupOption group, Func<Door, int> work)
    {
        var folder = parsed.GetRequiredValue(data);
        try
        {
            if (!Directory.Exists(folder))
                return Refused($"There is no data folder {folder}.");
            var (bench, mistakes) = WorkbenchFiles.Read(new DataFolder(folder).Workbench());
            foreach (var mistake in mistakes)
                Console.Error.WriteLine(mistake);
            if (bench is null)
                return ExitCode.Malformed;
            if (group.Of(parsed) is not { } file)
                return work(new Door(folder, () => bench.Workshop, TimeProvider.System));
            using var shop = GroupShop.Open(file.Connection, TimeProvider.System);
            return work(new Door(() => shop.Door, () => shop.Door, () => bench.Workshop, TimeProvider.System));
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or FormatException)
        {
            return Refused(broken.Message);
        }
    }

    private static int Told(TextWriter output, string says)
    {
        output.WriteLine(says);
        return ExitCode.Ok;
    }

    private static int Refused(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Malformed;
    }
}
