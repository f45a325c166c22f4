using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>Times at the bench.</summary>
internal static class BenchTime
{
    private const double Longest = 7 * 86400; // a paint that hardens over a week is still one job
    private const double LongestInHand = 86400; // nobody works longer at one thing without putting it down

    /// <summary>Hands-on time of a point: nothing is done in no time, and an order would put it anywhere.</summary>
    public static TimeSpan ReadHands(TomlTable table, string key)
    {
        if (table.Quantity(key, Dimension.Duration) is not { } time)
            return TimeSpan.Zero;
        if (time.Base is > 0 and <= LongestInHand)
            return TimeSpan.FromSeconds(time.Base);
        table.Wrong(key, $"\"{time}\"", "a time above 0 min, at most 1440 min: what takes longer is several points");
        return TimeSpan.Zero;
    }

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
