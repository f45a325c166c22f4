using Npgsql;
using Witnessmark.Groups;
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
        var admin = In("admin.json");
        var made = In("made.json");
        new GroupFile(store[0].Admin, null).Write(admin);
        var (exit, says) = Run("group", "add", shop, "--group", admin, "--to", made);
        Assert.True(exit == 0, says);
        var text = new NpgsqlConnectionStringBuilder(GroupFile.Read(made).Connection);
        text.Remove("Port");
        text.Remove("Pooling");
        text.Host = string.Join(',', store.Select(s => $"127.0.0.1:{s.Port}"));
        (GroupFile.Read(made) with { Connection = text.ConnectionString }).Write(Group);
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
