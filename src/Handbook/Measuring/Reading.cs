namespace Witnessmark.Handbook.Measuring;

/// <summary>A reading with its uncertainty, from the raw values and what the instrument can tell.</summary>
/// <remarks>
/// <para><b>Formula.</b> u² = s²/n (from three repeats on) + resolution²/12 + permissibleError²/3. Two marks on a rule make one
/// reading: their distance, with the instrument's two terms counted twice. U = 2u.</para>
/// <para><b>Units.</b> Every value, the resolution and the permissible error in one and the same unit; the answer in it too.</para>
/// <para><b>Source.</b> JCGM 100:2008 (GUM), 4.2.3 (mean and its deviation), 4.3.7 (half-width over √3), F.2.2.1 (resolution over √12),
/// 6.2.1 (coverage factor 2).</para>
/// <para><b>Valid when</b> the readings are independent and the instrument's error lies anywhere within its permissible error
/// with equal chance. With fewer than three repeats their scatter says too little and is not used.</para>
/// </remarks>
public static class Reading
{
    /// <summary>From which number of repeats on their scatter counts.</summary>
    public const int RepeatsThatTell = 3;

    /// <summary>The mean of repeated values.</summary>
    /// <param name="values">One or more values in one unit.</param>
    /// <param name="instrument">What they were read with, in the same unit.</param>
    /// <exception cref="ArgumentException">There is no value.</exception>
    public static Measured OfValues(ReadOnlySpan<double> values, Instrument instrument)
    {
        if (values.IsEmpty)
            throw new ArgumentException("At least one value is needed.", nameof(values));
        var mean = Mean(values);
        if (values.Length == 1)
            return Measured.With(mean, Math.Sqrt(instrument.Variance), null);
        var s = Scatter(values, mean);
        var ofMean = values.Length >= RepeatsThatTell ? s * s / values.Length : 0;
        return Measured.With(mean, Math.Sqrt(ofMean + instrument.Variance), s);
    }

    /// <summary>The distance between two marks on a rule.</summary>
    /// <param name="first">One end, any sign.</param>
    /// <param name="second">The other end, same unit.</param>
    /// <param name="instrument">The rule, in the same unit.</param>
    public static Measured OfMarks(double first, double second, Instrument instrument) =>
        Measured.With(Math.Abs(first - second), Math.Sqrt(2 * instrument.Variance), null);

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }

    private static double Scatter(ReadOnlySpan<double> values, double mean)
    {
        var squares = 0.0;
        foreach (var value in values)
            squares += (value - mean) * (value - mean);
        return Math.Sqrt(squares / (values.Length - 1));
    }
}

/// <summary>What an instrument can tell, in the unit of the reading.</summary>
/// <param name="Resolution">The smallest step that is read, zero or more.</param>
/// <param name="PermissibleError">Half-width within which its error lies, zero or more.</param>
public readonly record struct Instrument(double Resolution, double PermissibleError)
{
    /// <summary>resolution²/12 + permissibleError²/3.</summary>
    public double Variance => Resolution * Resolution / 12 + PermissibleError * PermissibleError / 3;
}

/// <summary>A value with what is known of its uncertainty, all in one unit.</summary>
/// <param name="Value">The best estimate.</param>
/// <param name="StandardUncertainty">One standard deviation.</param>
/// <param name="ExpandedUncertainty">Two standard deviations.</param>
/// <param name="Repeatability">Standard deviation of the repeats (n − 1), or null with a single value.</param>
public readonly record struct Measured(
    double Value,
    double StandardUncertainty,
    double ExpandedUncertainty,
    double? Repeatability
)
{
    internal static Measured With(double value, double u, double? repeatability) => new(value, u, 2 * u, repeatability);
}
