using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>A state that the machine is brought into so that points can be reached.</summary>
/// <param name="Name"><c>rear stand</c>.</param>
/// <param name="Words">How to bring it about, safely.</param>
/// <param name="Set">Hands-on time to bring it about.</param>
/// <param name="Clear">Hands-on time to undo it; zero when it ends by itself.</param>
/// <param name="ClearsAfter">Unattended time until it ends by itself, such as cooling down; zero when it does not.</param>
/// <param name="Never">States that cannot be true at the same time.</param>
public sealed record ReachState(
    string Name,
    string Words,
    TimeSpan Set,
    TimeSpan Clear,
    TimeSpan ClearsAfter,
    IReadOnlyList<string> Never
);

/// <summary>Reads one table <c>[reach."rear stand"]</c>.</summary>
internal static class ReachTable
{
    public static ReachState Read(string name, TomlTable table)
    {
        var reach = new ReachState(
            name,
            table.Text("words"),
            BenchTime.Read(table, "set", needed: true),
            BenchTime.Read(table, "clear", needed: false),
            BenchTime.Read(table, "clears-after", needed: false),
            table.Texts("never-with")
        );
        table.NoOtherKeys();
        return reach;
    }
}
