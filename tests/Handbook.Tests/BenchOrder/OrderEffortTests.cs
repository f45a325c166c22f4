using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>
/// How much work the search takes, counted in ways looked at and therefore the same on every machine. A bound that is weaker than it was, or a
/// beaten way that is kept, changes no answer: it shows here alone. The numbers are this program's own; that the answers are right is
/// shown by the solver, the enumeration and the replay beside this.
/// </summary>
public class OrderEffortTests
{
    // seed, tasks, states, ways that the proof takes
    private static readonly int[][] Proofs =
    [
        [9005, 11, 2, 54],
        [9008, 14, 5, 480],
        [9014, 11, 6, 751],
        [9016, 13, 3, 994],
        [9019, 7, 6, 44],
        [9025, 13, 2, 180],
        [9029, 8, 6, 86],
        [9033, 12, 5, 673],
        [9037, 7, 4, 116],
        [9044, 14, 6, 928],
        [9048, 9, 5, 384],
        [9051, 12, 3, 127],
        [9056, 8, 3, 41],
        [9064, 7, 6, 80],
        [9070, 13, 2, 136],
        [9078, 12, 5, 123],
        [9084, 9, 6, 1272],
        [9091, 7, 3, 66],
        [9105, 12, 2, 175],
        [9107, 14, 4, 384],
        [9114, 12, 6, 224],
        [9116, 14, 3, 634],
        [9118, 7, 5, 205],
        [9121, 10, 3, 56],
        [9126, 6, 3, 136],
        [9129, 9, 6, 243],
        [9131, 11, 3, 499],
        [9151, 13, 3, 247],
        [9156, 9, 3, 467],
        [9160, 13, 2, 139],
        [9163, 7, 5, 98],
        [9167, 11, 4, 55],
        [9171, 6, 3, 111],
        [9181, 7, 3, 45],
        [9185, 11, 2, 134],
        [9191, 8, 3, 77],
        [9194, 11, 6, 66],
        [9199, 7, 6, 115],
        [9201, 9, 3, 356],
        [9203, 11, 5, 303],
        [9207, 6, 4, 63],
        [9211, 10, 3, 127],
        [9215, 14, 2, 98],
        [9222, 12, 4, 124],
        [9226, 7, 3, 113],
        [9231, 12, 3, 613],
        [9237, 9, 4, 66],
        [9241, 13, 3, 157],
        [9254, 8, 6, 320],
        [9258, 12, 5, 552],
        [9263, 8, 5, 371],
        [9267, 12, 4, 759],
        [9273, 9, 5, 304],
        [9278, 14, 5, 302],
        [9285, 12, 2, 186],
        [9291, 9, 3, 96],
        [9294, 12, 6, 313],
        [9298, 7, 5, 210],
        [9301, 10, 3, 53],
        [9305, 14, 2, 685],
    ];

    // seed, tasks, states, effort, minutes of the best order found, minutes of the bound
    private static readonly double[][] Found =
    [
        [9500, 30, 2, 500, 423, 423],
        [9500, 30, 2, 5000, 423, 423],
        [9501, 31, 3, 500, 562, 454],
        [9501, 31, 3, 5000, 494, 454],
        [9505, 27, 2, 500, 419, 404],
        [9505, 27, 2, 5000, 404, 404],
        [9506, 28, 3, 500, 428, 355],
        [9506, 28, 3, 5000, 365, 355],
        [9508, 30, 5, 500, 495, 386],
        [9508, 30, 5, 5000, 474, 386],
        [9509, 31, 6, 500, 578, 474],
        [9509, 31, 6, 5000, 520, 474],
        [9510, 32, 2, 500, 456, 456],
        [9510, 32, 2, 5000, 456, 456],
        [9511, 33, 3, 500, 461, 425],
        [9511, 33, 3, 5000, 446, 425],
        [9512, 26, 4, 500, 350, 345],
        [9512, 26, 4, 5000, 346, 345],
        [9515, 29, 2, 500, 352, 343],
        [9515, 29, 2, 5000, 343, 343],
        [9516, 30, 3, 500, 542, 500],
        [9516, 30, 3, 5000, 527, 500],
        [9517, 31, 4, 500, 538, 471],
        [9517, 31, 4, 5000, 558, 471],
        [9518, 32, 5, 500, 521, 467],
        [9518, 32, 5, 5000, 511, 467],
        [9520, 26, 2, 500, 349, 341],
        [9520, 26, 2, 5000, 341, 341],
        [9521, 27, 3, 500, 526, 340],
        [9521, 27, 3, 5000, 452, 340],
        [9522, 28, 4, 500, 390, 381],
        [9522, 28, 4, 5000, 381, 381],
        [9523, 29, 5, 500, 453, 450],
        [9523, 29, 5, 5000, 450, 450],
        [9525, 31, 2, 500, 450, 450],
        [9525, 31, 2, 5000, 450, 450],
    ];

    [Fact]
    public void A_proof_takes_so_many_ways_and_with_one_less_there_is_none()
    {
        foreach (var (seed, tasks, states, ways) in Proofs.Select(p => (p[0], p[1], p[2], p[3])))
        {
            var (on, of) = RandomOrders.Of(seed, tasks, states);
            Assert.True(Order.For(on, of, ways).Certain.Proven, $"seed {seed} takes more than {ways}");
            Assert.False(Order.For(on, of, ways - 1).Certain.Proven, $"seed {seed} takes fewer than {ways}");
        }
    }

    [Fact]
    public void Of_many_tasks_it_finds_an_order_as_short_and_a_bound_as_high()
    {
        foreach (var row in Found)
        {
            var (on, of) = RandomOrders.Of((int)row[0], (int)row[1], (int)row[2]);
            var plan = Order.For(on, of, (int)row[3]).Certain;
            Assert.False(plan.Proven);
            Assert.True(
                (row[4], row[5]) == (plan.Makespan.Seconds / 60, plan.LowerBound!.Value.Seconds / 60),
                $"seed {row[0]}, effort {row[3]}: {plan.Makespan.Seconds / 60} over {plan.LowerBound!.Value.Seconds / 60} min"
            );
        }
    }
}
