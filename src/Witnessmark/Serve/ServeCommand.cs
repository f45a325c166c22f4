using System.CommandLine;

namespace Witnessmark.Serve;

/// <summary><c>witnessmark serve</c>: the shop's server.</summary>
public static class ServeCommand
{
    private const int UsualPort = 5080;

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "folder with the ledger and with book/, sheets/ and shop.toml",
            DefaultValueFactory = _ => "data",
        };
        var port = new Option<int>("--port")
        {
            Description = "port on this computer; 0 takes any free one",
            DefaultValueFactory = _ => UsualPort,
        };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535)
                result.AddError($"--port {result.GetValueOrDefault<int>()}: 0 to 65535 is allowed.");
        });
        var urls = new Option<string?>("--urls")
        {
            Description = "addresses instead of --port, such as http://0.0.0.0:5080; whoever reaches them can write",
        };
        var demo = new Option<bool>("--demo") { Description = "fill an empty data folder with the invented workshop" };
        var serve = new Command("serve", "Serve the bench to this computer, or to the shop's network.")
        {
            data,
            port,
            urls,
            demo,
        };
        serve.SetAction(parsed =>
            Server.Run(
                new(parsed.GetRequiredValue(data)),
                parsed.GetValue(urls) ?? $"http://127.0.0.1:{parsed.GetValue(port)}",
                parsed.GetValue(demo)
            )
        );
        return serve;
    }
}
