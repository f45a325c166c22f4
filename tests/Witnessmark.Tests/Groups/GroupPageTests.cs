using System.Text.RegularExpressions;
using Witnessmark.Groups;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

/// <summary>The examples of <c>docs/group.md</c>, run by the program and by PostgreSQL's own; of numbers, days and computers only the form is compared.</summary>
public sealed partial class GroupPageTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "Guides", "group.md")
    );

    private readonly Postgres store = Postgres.Started();
    private readonly TempFolder folder = new();

    public void Dispose()
    {
        folder.Dispose();
        store.Dispose();
    }

    [Fact]
    public void Its_commands_print_what_it_says_and_a_dump_brings_everything_back()
    {
        using (RunningShop.Serve(In("data"))) { } // a shop with its first job
        Psql(Line("createdb group"));
        new GroupFile($"{store.Admin};Database=group", null).Write(In("admin.json"));
        var examples = Example().Matches(Page).ToDictionary(e => e.Groups["command"].Value.Split(" --")[0]);
        Assert.Equal(6, examples.Count);
        foreach (var first in (string[])["group add north", "group upgrade", "migrate", "verify", "doctor"])
            Runs(examples[first]);
        Assert.Contains(
            "opened by this file",
            Printed("key show --group north.json").Says + Printed("doctor --group north.json").Says
        );

        Psql(Line("pg_dump ").Replace("group.dump", store.In("group.dump"), StringComparison.Ordinal));
        var dump = File.ReadAllText(store.In("group.dump"), System.Text.Encoding.Latin1);
        Assert.DoesNotContain("\"kty\"", dump, StringComparison.Ordinal); // no private key in the clear
        var roles = store.In("roles.sql");
        Psql(Line("pg_dumpall ").Replace("roles.sql", roles, StringComparison.Ordinal));
        Assert.Contains("CREATE ROLE witnessmark_north", File.ReadAllText(roles), StringComparison.Ordinal);

        Psql(Line("createdb again"));
        Psql(Line("pg_restore ").Replace("group.dump", store.In("group.dump"), StringComparison.Ordinal));
        var before = GroupFile.Read(In("north.json"));
        File.Delete(In("north.json"));
        (
            before with
            {
                Connection = before.Connection.Replace("Database=group", "Database=again", StringComparison.Ordinal),
            }
        ).Write(In("north.json"));
        var (_, key) = Printed("key show --group north.json");
        var ledger = Identity("group");
        Assert.Equal(ledger, Identity("again"));
        Runs(examples["group restored"]);
        Runs(examples["verify"]);
        Assert.NotEqual(ledger, Identity("again"));
        Assert.Equal(key, Printed("key show --group north.json").Says);
        Assert.Contains("opened by this file", Printed("doctor --group north.json").Says);
    }

    private string In(string name) => Path.Combine(folder.Path, name);

    private string? Identity(string database) => store.Value("SELECT \"Id\" FROM shop_north.ledger_identity", database);

    /// <summary>The line of the page that begins so.</summary>
    private static string Line(string start) =>
        Page.Split('\n').Single(line => line.StartsWith(start, StringComparison.Ordinal));

    private void Psql(string line)
    {
        var words = line.Split(' ');
        store.Run(words[0], words[1..]);
    }

    private void Runs(Match example)
    {
        var (exit, says) = Printed(example.Groups["command"].Value);
        Assert.Equal(Form(example.Groups["says"].Value), Form(says));
        Assert.Equal(example.Groups["exit"].Value is { Length: > 0 } told ? told : "0", $"{exit}");
    }

    private (int Exit, string Says) Printed(string command)
    {
        var words = command
            .Split(' ')
            .Select(w => w == "data" || w.EndsWith(".json", StringComparison.Ordinal) ? In(w) : w);
        var (exit, says) = GroupFolder.Run([.. words]);
        return (exit, says.Replace(folder.Path + "/", "", StringComparison.Ordinal));
    }

    private static string Form(string text) => At().Replace(Number().Replace(text.Trim(), "0"), "at db;");

    [GeneratedRegex(@"```console ?(?<exit>\d?)\n\$ witnessmark (?<command>.+)\n(?<says>[^`]+)```")]
    private static partial Regex Example();

    [GeneratedRegex(@"\d[\d.:-]*")]
    private static partial Regex Number();

    [GeneratedRegex(@"at \S+;")]
    private static partial Regex At();
}
