using System.CommandLine;
using Witnessmark.Groups;

namespace Witnessmark.Serve;

/// <summary><c>witnessmark serve</c>: the shop's server.</summary>
public static class ServeCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var data = new Option<string>("--data")
        {
            Description = "folder with the ledger and with book/, sheets/ and shop.toml",
            DefaultValueFactory = _ => "data",
        };
        var demo = new Option<bool>("--demo") { Description = "fill an empty data folder with the invented workshop" };
        var group = GroupOption.Create();
        var listening = new ListeningOptions();
        var serve = new Command("serve", "Serve the bench to this computer, or to the shop's network.")
        {
            data,
            demo,
            group,
        };
        listening.AddTo(serve);
        serve.SetAction(parsed =>
        {
            var (folder, invented) = (new DataFolder(parsed.GetRequiredValue(data)), parsed.GetValue(demo));
            return parsed.GetResult(group) is null
                ? Server.Run(folder, listening.Of(parsed), invented)
                : Server.Run(folder, listening.Of(parsed), invented, () => group.Of(parsed)!);
        });
        return serve;
    }
}
