using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>In which order to tighten the fasteners of a circle or a plate, and in which stages.</summary>
/// <remarks>
/// <para><b>Formula.</b> Circle, even number: pairs of opposite fasteners, the next pair the farthest from the last; odd number:
/// steps of (n − 1)/2. Plate: nearest to the centre first, each followed by its mirror through the centre. Ties: the lower number.</para>
/// <para><b>Units.</b> Fasteners count from 1, round the circle or row by row; torque in N·m.</para>
/// <para><b>Source.</b> Common practice (crosswise, from the inside out), no source; the rule that makes it definite is our own. The
/// maker's order comes first where there is one.</para>
/// <para><b>Valid when</b> spacing is equal. Every stage is completed before the next; a last check pass is not part of the steps.</para>
/// </remarks>
public static class TighteningOrder
{
    /// <summary>The order for fasteners on a circle.</summary>
    /// <param name="fasteners">1 or more.</param>
    public static int[] Circle(int fasteners)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(fasteners, 1);
        return fasteners % 2 == 0 ? Opposite(fasteners) : Stepped(fasteners);
    }

    /// <summary>The order for fasteners in rows and columns.</summary>
    /// <param name="rows">1 or more.</param>
    /// <param name="columns">1 or more.</param>
    public static int[] Plate(int rows, int columns)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);
        var count = rows * columns;
        // The mirror of number n is count + 1 − n, so the first half, each with its mirror, is everybody.
        return
        [
            .. Enumerable
                .Range(1, (count + 1) / 2)
                .OrderBy(n => FromCentre(n, rows, columns))
                .SelectMany(n => n == count + 1 - n ? new[] { n } : [n, count + 1 - n]),
        ];
    }

    /// <summary>Every stage in this order, each completed before the next.</summary>
    /// <param name="order">The fasteners in order.</param>
    /// <param name="torque">The full torque.</param>
    /// <param name="stages">Parts of it, in order.</param>
    public static IEnumerable<TighteningStep> Steps(
        IReadOnlyList<int> order,
        Torque torque,
        IReadOnlyList<Ratio> stages
    ) => stages.SelectMany(stage => order.Select(n => new TighteningStep(n, torque * stage.Value)));

    private static int[] Opposite(int fasteners)
    {
        var axes = fasteners / 2;
        var left = Enumerable.Range(2, axes - 1).ToList();
        var order = new List<int> { 1, 1 + axes };
        for (var last = 1; left.Count > 0; )
        {
            var next = left.MaxBy(a => Math.Min(a > last ? a - last : last - a, axes - Math.Abs(a - last)));
            left.Remove(next);
            order.AddRange([next, next + axes]);
            last = next;
        }
        return [.. order];
    }

    private static int[] Stepped(int fasteners) =>
        [.. Enumerable.Range(0, fasteners).Select(i => i * ((fasteners - 1) / 2) % fasteners + 1)];

    // Twice the distance, squared: whole numbers, so that equal distances are equal.
    private static int FromCentre(int number, int rows, int columns)
    {
        var (row, column) = Math.DivRem(number - 1, columns);
        var (up, across) = (2 * row - (rows - 1), 2 * column - (columns - 1));
        return up * up + across * across;
    }
}

/// <summary>One step of the tightening.</summary>
/// <param name="Fastener">Its number, from 1.</param>
/// <param name="Torque">To which it is tightened now.</param>
public readonly record struct TighteningStep(int Fastener, Torque Torque);
