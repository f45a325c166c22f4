using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>How long a point takes: the one place where an order asks for it.</summary>
internal static class PointTimes
{
    /// <summary>Hands-on time.</summary>
    public static Duration Hands(this OrderQuestion asked, Point point) => new(asked.Times.Hands(point).TotalSeconds);

    /// <summary>Unattended time afterwards.</summary>
    public static Duration Waits(this OrderQuestion asked, Point point) => new(asked.Times.Waits(point).TotalSeconds);
}
