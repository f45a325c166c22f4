using System.Globalization;
using System.Text.RegularExpressions;

namespace Witnessmark.Handbook.Tests.Numerics;

/// <summary>A data set of NIST StRD, linear regression, read from its unmodified file: certified values and data.</summary>
internal sealed partial class NistLinear
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private readonly string[] lines;
    private readonly double[][] rows;
    private readonly bool hasIntercept;

    public NistLinear(string name)
    {
        lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "ReferenceData", "nist", name + ".dat"));
        var parameters = Section("Certified Values").Select(l => Parameter().Match(l)).Where(m => m.Success).ToArray();
        Estimates = [.. parameters.Select(m => Number(m.Groups[2].Value))];
        Deviations = [.. parameters.Select(m => Number(m.Groups[3].Value))];
        hasIntercept = parameters[0].Groups[1].Value == "0";
        var residual = Array.FindIndex(lines, l => l.Trim() == "Residual") + 1; // "Standard Deviation   0.88…"
        ResidualDeviation = Number(Words(lines[residual])[2]);
        rows = [.. Section("Data  ").Select(Words).Where(w => w.Length > 1).Select(w => w.Select(Number).ToArray())];
    }

    public double[] Estimates { get; }

    public double[] Deviations { get; }

    public double ResidualDeviation { get; }

    public double[] Y => [.. rows.Select(r => r[0])];

    /// <summary>Columns of the model: the predictors, or the powers of the only one.</summary>
    public double[,] Design
    {
        get
        {
            var x = new double[rows.Length, Estimates.Length];
            for (var i = 0; i < rows.Length; i++)
            for (var j = 0; j < Estimates.Length; j++)
                x[i, j] = Term(rows[i], hasIntercept ? j : j + 1);
            return x;
        }
    }

    private static double Term(double[] row, int term) =>
        term == 0 ? 1
        : row.Length > 2 ? row[term]
        : Enumerable.Repeat(row[1], term).Aggregate(1.0, (power, x) => power * x);

    // The head of the file says where it stands: "Certified Values  (lines 31 to 46)"
    private IEnumerable<string> Section(string label)
    {
        var match = lines
            .Where(l => l.Contains(label, StringComparison.Ordinal))
            .Select(l => Place().Match(l))
            .First(m => m.Success);
        var first = int.Parse(match.Groups[1].Value, Invariant);
        return lines[(first - 1)..int.Parse(match.Groups[2].Value, Invariant)];
    }

    private static string[] Words(string line) =>
        line.Split((char[])[' ', '\t'], StringSplitOptions.RemoveEmptyEntries);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, Invariant);

    [GeneratedRegex(@"\(lines\s+(\d+)\s+to\s+(\d+)\)")]
    private static partial Regex Place();

    [GeneratedRegex(@"^\s+B(\d+)\s+(\S+)\s+(\S+)\s*$")]
    private static partial Regex Parameter();
}
