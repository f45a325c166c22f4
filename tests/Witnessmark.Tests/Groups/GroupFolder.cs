using Npgsql;
using Witnessmark.Groups;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

/// <summary>The files that every server of a shop has a copy of, and the file by which it gets to the store.</summary>
internal sealed class GroupFolder : IDisposable
{
    private readonly TempFolder folder = new();

    /// <param name="shop">A shop that the store does not have yet.</param>
    /// <param name="store">The machines of the store, the first of them the primary now.</param>
    public GroupFolder(string shop, params Postgres[] store)
    {
        DemoShop.Fill(new(Files), AppContext.BaseDirectory);
        Shop = shop;
        var text = new NpgsqlConnectionStringBuilder(GroupAdmin.Add(store[0].Admin, ShopName.Of(shop)));
        text.Remove("Port");
        text.Host = string.Join(',', store.Select(s => $"127.0.0.1:{s.Port}"));
        GroupFile.New(text.ConnectionString).Write(Group);
    }

    public string Shop { get; }

    /// <summary>Folder with the shop's files.</summary>
    public string Files => In("files");

    /// <summary>The file for <c>--group</c>.</summary>
    public string Group => In("group.json");

    public string Connection => GroupFile.Read(Group).Connection;

    public string In(string name) => Path.Combine(folder.Path, name);

    public RunningShop Serve() => RunningShop.Serve("--data", Files, "--group", Group);

    /// <summary>Runs a command; its exit code and all that it printed.</summary>
    public static (int Exit, string Says) Run(params string[] arguments)
    {
        using var process = RunningShop.Start(arguments);
        var errors = process.StandardError.ReadToEndAsync();
        var says = process.StandardOutput.ReadToEnd() + errors.Result;
        process.WaitForExit();
        return (process.ExitCode, says.Trim());
    }

    public void Dispose() => folder.Dispose();
}
