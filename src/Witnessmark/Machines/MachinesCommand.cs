using System.CommandLine;
using Witnessmark.Groups;

namespace Witnessmark.Machines;

/// <summary><c>witnessmark machines</c>: the shop's register.</summary>
internal static class MachinesCommand
{
    /// <summary>The command with its sub-commands.</summary>
    public static Command Create() =>
        new("machines", "The shop's machines: import a list, find one, forget an owner.")
        {
            Import(),
            Find(),
            ForgetOwner(),
        };

    private static Option<string> Data() =>
        new("--data") { Description = "data folder of the shop", DefaultValueFactory = _ => "data" };

    private static Option<bool> Json() => new("--json") { Description = "the answer as JSON" };

    private static Command Import()
    {
        var file = new Argument<string>("FILE") { Description = "the shop's list as CSV with a head line" };
        var map = new Option<string?>("--map")
        {
            Description = "which column says what: vin=Frame,plate=Registration, or a TOML file with [columns]",
        };
        var aside = new Option<string?>("--set-aside") { Description = "file for the rows that were not taken" };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var import = new Command("import", "Take a list in. Ctrl+C leaves everything as it was.")
        {
            file,
            map,
            data,
            group,
            aside,
            json,
        };
        import.SetAction(
            (parsed, cancel) =>
                // on a thread of its own, so that Ctrl+C is heard at once
                Task.Run(
                    () =>
                        new ImportMachines(
                            parsed.GetRequiredValue(file),
                            parsed.GetValue(map),
                            CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                            parsed.GetValue(aside),
                            parsed.GetValue(json)
                        ).Run(cancel),
                    CancellationToken.None
                )
        );
        return import;
    }

    private static Command Find()
    {
        var text = new Argument<string>("TEXT")
        {
            Description = "three or more letters or digits of VIN, frame number, plate, id or owner",
        };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var find = new Command("find", "Find machines in the register.") { text, data, group, json };
        find.SetAction(parsed =>
            FindMachines.Run(
                parsed.GetRequiredValue(text),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(json)
            )
        );
        return find;
    }

    private static Command ForgetOwner()
    {
        var id = new Argument<string>("ID") { Description = "the machine's id" };
        var (data, group) = (Data(), GroupOption.Create());
        var forget = new Command("forget-owner", "Take away who brings a machine; its record stays.")
        {
            id,
            data,
            group,
        };
        forget.SetAction(parsed =>
            FindMachines.ForgetOwner(
                parsed.GetRequiredValue(id),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group)
            )
        );
        return forget;
    }
}
