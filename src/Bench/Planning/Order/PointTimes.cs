using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>How long a point takes: the one place where an order asks for it.</summary>
internal static class PointTimes
{
    /// <summary>Hands-on time.</summary>
    public static Duration Hands(Point point) => new(point.Hands.TotalSeconds);

    /// <summary>Unattended time afterwards.</summary>
    public static Duration Waits(Point point) => new(point.Waits.TotalSeconds);
}
