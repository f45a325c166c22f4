using System.CommandLine;
using Witnessmark.Groups;

namespace Witnessmark.Campaigns;

/// <summary><c>witnessmark campaigns</c>: recalls and bulletins.</summary>
internal static class CampaignsCommand
{
    /// <summary>The command with its sub-commands.</summary>
    public static Command Create() =>
        new("campaigns", "Recalls and bulletins: import lists, look a machine up, withdraw one of the own.")
        {
            Import(),
            For(),
            Withdrawn(),
        };

    private static Option<string> Data() =>
        new("--data") { Description = "data folder of the shop", DefaultValueFactory = _ => "data" };

    private static Option<bool> Json() => new("--json") { Description = "the answer as JSON" };

    private static Command Import()
    {
        var file = new Argument<string>("FILE")
        {
            Description = "the public list as unpacked text, or the shop's own list (.toml)",
        };
        var aside = new Option<string?>("--set-aside")
        {
            Description = "file for the rows that cannot be read: line, reason, row",
        };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var import = new Command("import", "Take a list in. Ctrl+C leaves everything as it was.")
        {
            file,
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
                        new ImportRun(
                            parsed.GetRequiredValue(file),
                            CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                            parsed.GetValue(aside),
                            parsed.GetValue(json)
                        ).Run(cancel),
                    CancellationToken.None
                )
        );
        return import;
    }

    private static Command For()
    {
        var make = new Option<string>("--make") { Description = "make", Required = true };
        var model = new Option<string>("--model") { Description = "model", Required = true };
        var year = new Option<string>("--year") { Description = "model year", Required = true };
        var vin = new Option<string?>("--vin") { Description = "VIN, all 17 signs" };
        var built = new Option<string?>("--built") { Description = "day of building, such as 2024-03-31" };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var look = new Command("for", "Look a machine up in the lists.")
        {
            make,
            model,
            year,
            vin,
            built,
            data,
            group,
            json,
        };
        look.SetAction(parsed =>
        {
            var (machine, why) = AskedMachineText.Read(
                parsed.GetValue(make),
                parsed.GetValue(model),
                parsed.GetValue(year),
                parsed.GetValue(vin),
                parsed.GetValue(built)
            );
            return LookUp.Run(
                machine,
                why,
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(json)
            );
        });
        return look;
    }

    private static Command Withdrawn()
    {
        var number = new Argument<string>("NUMBER") { Description = "its number; dashes and capitals are no matter" };
        var because = new Option<string>("--because") { Description = "why", Required = true };
        var by = new Option<string>("--by") { Description = "who decides", Required = true };
        var (data, group) = (Data(), GroupOption.Create());
        var withdraw = new Command(
            "withdraw",
            "Take a campaign of the shop's own lists back. It is kept on record, with who did and why."
        )
        {
            number,
            because,
            by,
            data,
            group,
        };
        withdraw.SetAction(parsed =>
            Withdraw.Run(
                parsed.GetRequiredValue(number),
                parsed.GetRequiredValue(because),
                parsed.GetRequiredValue(by),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group)
            )
        );
        return withdraw;
    }
}
