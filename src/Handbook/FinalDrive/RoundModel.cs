namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Neighbouring columns of the model that belong to one cause.</summary>
internal readonly record struct Columns(int First, int Count);

/// <summary>The columns of the round-the-chain model, and what their coefficients mean.</summary>
internal sealed class RoundModel(RoundDrive drive, int harmonics)
{
    public static readonly Columns Mean = new(0, 1);
    public static readonly Columns Wheel = new(1, 2);
    public static readonly Columns Front = new(3, 2);

    private const int CurvePointsPerWave = 64;

    public RoundDrive Drive => drive;

    public Columns Chain { get; } = new(5, 2 * harmonics);

    public int Unknowns => Chain.First + Chain.Count;

    public double[,] Design(IReadOnlyList<RoundReading> readings)
    {
        var x = new double[readings.Count, Unknowns];
        for (var i = 0; i < readings.Count; i++)
        {
            x[i, 0] = 1;
            Put(x, i, Wheel.First, readings[i].Link / drive.RearTeeth);
            Put(x, i, Front.First, readings[i].Link / drive.FrontTeeth);
            for (var j = 1; j <= harmonics; j++)
                Put(x, i, Chain.First + 2 * (j - 1), j * readings[i].Link / drive.Links);
        }
        return x;
    }

    public static double[,] Without(double[,] design, Columns group)
    {
        var rest = new double[design.GetLength(0), design.GetLength(1) - group.Count];
        for (var i = 0; i < rest.GetLength(0); i++)
        for (var j = 0; j < rest.GetLength(1); j++)
            rest[i, j] = design[i, j < group.First ? j : j + group.Count];
        return rest;
    }

    /// <summary>A single wave: its amplitude and where it is loosest.</summary>
    public Wave Wave(double[] b, Columns group, int teeth, Tested tested)
    {
        var (cosine, sine) = (b[group.First], b[group.First + 1]);
        var loosest = teeth / (2 * Math.PI) * Math.Atan2(sine, cosine);
        return new(tested, new(Math.Sqrt(cosine * cosine + sine * sine)), loosest < 0 ? loosest + teeth : loosest);
    }

    /// <summary>The fitted curve of the chain: its height and where it is tightest.</summary>
    public ChainCurve Curve(double[] b, Tested tested)
    {
        var low = Extreme(b, +1);
        var high = Extreme(b, -1);
        return new(tested, new(Chained(b, high) - Chained(b, low)), low * drive.Links);
    }

    // The best of a fine grid, then ever smaller steps from it: between neighbours of the grid there is one extreme.
    private double Extreme(double[] b, int sign)
    {
        var points = CurvePointsPerWave * harmonics;
        var best = Enumerable.Range(0, points).MinBy(i => sign * Chained(b, (double)i / points)) / (double)points;
        var step = 1.0 / points;
        for (var round = 0; round < 40; round++, step /= 2)
            best = new[] { best - step, best, best + step }.MinBy(at => sign * Chained(b, at));
        return best - Math.Floor(best);
    }

    private double Chained(double[] b, double turn)
    {
        var sum = 0.0;
        for (var j = 1; j <= harmonics; j++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * j * turn);
            sum += b[Chain.First + 2 * (j - 1)] * cosine + b[Chain.First + 2 * (j - 1) + 1] * sine;
        }
        return sum;
    }

    private static void Put(double[,] x, int row, int column, double turns) =>
        (x[row, column + 1], x[row, column]) = Math.SinCos(2 * Math.PI * turns);
}
