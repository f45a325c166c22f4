using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

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

/// <summary>Times at the bench.</summary>
internal static class BenchTime
{
    private const double Longest = 7 * 86400; // a paint that hardens over a week is still one job

    /// <summary>A time; zero with a mistake noted when it cannot be one.</summary>
    public static TimeSpan Read(TomlTable table, string key, bool needed)
    {
        if (
            (needed ? table.Quantity(key, Dimension.Duration) : table.QuantityOrNothing(key, Dimension.Duration))
            is not { } time
        )
            return TimeSpan.Zero;
        if (time.Base is >= 0 and <= Longest)
            return TimeSpan.FromSeconds(time.Base);
        table.Wrong(key, $"\"{time}\"", "a time from 0 min to 7 day");
        return TimeSpan.Zero;
    }
}
