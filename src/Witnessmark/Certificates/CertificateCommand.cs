using System.CommandLine;

namespace Witnessmark.Certificates;

/// <summary><c>witnessmark certificate make|show|renew</c>: the shop's own authority, and what the server shows to devices.</summary>
internal static class CertificateCommand
{
    public static Command Create() =>
        new("certificate", "The shop's own certificates, for HTTPS in its own network.") { Make(), Show(), Renew() };

    private static Command Make()
    {
        var data = DataOption();
        var names = new Option<string[]>("--for")
        {
            Description = "names and addresses that devices open; left out: this computer's own",
            AllowMultipleArgumentsPerToken = true,
        };
        var make = new Command(
            "make",
            "Make a server certificate, and first the shop's authority where there is none. Ends with 0 made, 2 not."
        )
        {
            data,
            names,
        };
        make.SetAction(parsed =>
            Run(parsed.GetRequiredValue(data)).Make(parsed.GetValue(names) ?? [], ThisComputer.Names)
        );
        return make;
    }

    private static Command Show()
    {
        var data = DataOption();
        var json = new Option<bool>("--json") { Description = "one JSON object: authority, server" };
        var show = new Command(
            "show",
            "Print names, fingerprint and the days left. Ends with 0 valid, 1 run out, 2 there is none."
        )
        {
            data,
            json,
        };
        show.SetAction(parsed => Run(parsed.GetRequiredValue(data)).Show(parsed.GetValue(json)));
        return show;
    }

    private static Command Renew()
    {
        var data = DataOption();
        var renew = new Command(
            "renew",
            "Make the next server certificate for the same names; a running server takes it. Ends with 0 made, 2 not."
        )
        {
            data,
        };
        renew.SetAction(parsed => Run(parsed.GetRequiredValue(data)).Renew());
        return renew;
    }

    private static CertificateRun Run(string data) =>
        new(data, TimeProvider.System.GetUtcNow(), Console.Out, Console.Error);

    private static Option<string> DataOption() =>
        new("--data") { Description = "data folder of the shop", DefaultValueFactory = _ => "data" };
}
