using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Witnessmark.Handbook.Numerics;

/// <summary>Ordinary least squares for a linear model, y ≈ X·b.</summary>
/// <remarks>
/// <para><b>Formula.</b> X = Q·R (Householder), b = R⁻¹·Qᵀy, then one step of refinement on the residual; s² = RSS/(n − m); deviation
/// of b_j = s·‖row j of R⁻¹‖.</para>
/// <para><b>Units.</b> Whatever the columns and y have; RSS in y squared.</para>
/// <para><b>Source.</b> Golub and Van Loan, Matrix Computations, 5.3 (from memory). Checked against NIST StRD, linear regression.</para>
/// <para><b>Valid when</b> there are more readings than unknowns and the columns are independent: ask <see cref="Dependence"/> first.</para>
/// </remarks>
public static class LeastSquares
{
    /// <summary>Fits.</summary>
    /// <param name="design">X: one row for each reading, one column for each unknown.</param>
    /// <param name="y">The readings.</param>
    /// <exception cref="ArgumentException">No more readings than unknowns, or a column that is a sum of others.</exception>
    public static Fitted Fit(double[,] design, double[] y)
    {
        var (n, m) = (design.GetLength(0), design.GetLength(1));
        if (n <= m || y.Length != n)
            throw new ArgumentException($"{y.Length} readings for {n} rows and {m} unknowns.", nameof(design));
        var x = Matrix<double>.Build.DenseOfArray(design);
        var readings = Vector<double>.Build.Dense(y);
        var qr = x.QR(QRMethod.Thin);
        if (qr.R.Diagonal().Any(d => d == 0 || !double.IsFinite(d)))
            throw new ArgumentException("A column is a sum of others.", nameof(design));
        var b = Solve(qr, readings);
        b += Solve(qr, readings - x * b);
        var residual = readings - x * b;
        var rss = residual.DotProduct(residual);
        var inverse = qr.R.Solve(Matrix<double>.Build.DenseIdentity(m));
        var s = Math.Sqrt(rss / (n - m));
        return new([.. b], [.. inverse.EnumerateRows().Select(row => s * row.L2Norm())], rss, n - m);
    }

    private static Vector<double> Solve(QR<double> qr, Vector<double> y) => BackSubstituted(qr.R, qr.Q.Transpose() * y);

    private static Vector<double> BackSubstituted(Matrix<double> r, Vector<double> y)
    {
        var b = y.Clone();
        for (var i = r.ColumnCount - 1; i >= 0; i--)
        {
            for (var j = i + 1; j < r.ColumnCount; j++)
                b[i] -= r[i, j] * b[j];
            b[i] /= r[i, i];
        }
        return b;
    }
}

/// <summary>What a least-squares fit found.</summary>
/// <param name="Coefficients">b.</param>
/// <param name="Deviations">One standard deviation of each.</param>
/// <param name="ResidualSquares">RSS, the sum of squared residuals.</param>
/// <param name="DegreesOfFreedom">Readings less independent unknowns.</param>
public sealed record Fitted(double[] Coefficients, double[] Deviations, double ResidualSquares, int DegreesOfFreedom)
{
    /// <summary>√(RSS/dof).</summary>
    public double ResidualDeviation => Math.Sqrt(ResidualSquares / DegreesOfFreedom);
}
