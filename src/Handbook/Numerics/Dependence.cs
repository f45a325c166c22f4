using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Witnessmark.Handbook.Numerics;

/// <summary>Which columns of a linear model the readings cannot tell apart.</summary>
/// <remarks>
/// <para><b>Formula.</b> X = Q·R, R = U·Σ·Vᵀ; singular values not above 10⁻⁸ of the largest count as zero, and a column takes part
/// when its row of V has weight on them. Where columns depend on each other the shortest solution b = V·Σ⁺·Uᵀ·Qᵀ·y is taken: the
/// unknowns that take no part, and RSS, are the same in every solution.</para>
/// <para><b>Units.</b> None.</para>
/// <para><b>Source.</b> Golub and Van Loan, Matrix Computations, 5.5 (from memory).</para>
/// <para><b>Valid when</b> the columns are of like size, as sines, cosines and ones are.</para>
/// </remarks>
public sealed class Dependence
{
    // Far above rounding (1e-15), far below any design whose answer would still mean something.
    private const double Tolerance = 1e-8;

    private readonly Matrix<double> x;
    private readonly QR<double> qr;
    private readonly Svd<double> svd;

    /// <summary>Looks for dependent columns.</summary>
    /// <param name="design">One row for each reading, not fewer than columns.</param>
    public Dependence(double[,] design)
    {
        x = Matrix<double>.Build.DenseOfArray(design);
        qr = x.QR(QRMethod.Thin);
        svd = qr.R.Svd(true);
        Rank = svd.S.Count(s => s > Tolerance * svd.S[0]);
    }

    /// <summary>How many independent columns there are.</summary>
    public int Rank { get; }

    /// <summary>Whether all columns can be told apart.</summary>
    public bool None => Rank == x.ColumnCount;

    /// <summary>Whether the column can be replaced by others, wholly or in part.</summary>
    public bool Involves(int column)
    {
        var weight = 0.0;
        for (var i = Rank; i < x.ColumnCount; i++)
            weight += svd.VT[i, column] * svd.VT[i, column];
        return Math.Sqrt(weight) > Tolerance;
    }

    /// <summary>The shortest least-squares solution; its deviations are not known.</summary>
    public Fitted Shortest(double[] y)
    {
        var readings = Vector<double>.Build.Dense(y);
        var turned = svd.U.Transpose() * (qr.Q.Transpose() * readings);
        for (var i = 0; i < turned.Count; i++)
            turned[i] = i < Rank ? turned[i] / svd.S[i] : 0;
        var b = svd.VT.Transpose() * turned;
        var residual = readings - x * b;
        return new([.. b], [], residual.DotProduct(residual), y.Length - Rank);
    }
}
