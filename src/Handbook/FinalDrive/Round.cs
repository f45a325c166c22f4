using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>What the readings round the chain tell.</summary>
/// <param name="Min">Smallest reading: the place to adjust at.</param>
/// <param name="Max">Largest reading.</param>
/// <param name="MinAtLink">Where the smallest was read.</param>
public sealed record Round(Length Min, Length Max, double MinAtLink)
{
    internal Round(Length min, double max, double minAtLink)
        : this(min, new Length(max), minAtLink) { }

    /// <summary>μ of the fit; null when it cannot be told.</summary>
    public Length? Mean { get; init; }

    /// <summary>√(RSS/dof) of the fit.</summary>
    public Length? Residual { get; init; }

    /// <summary>The components, or null when they cannot be told apart.</summary>
    public RoundComponents? Components { get; init; }

    /// <summary>The components that cannot be told apart, or null.</summary>
    public IReadOnlyList<string>? Confounded { get; init; }
}

/// <summary>The three causes of uneven slack.</summary>
/// <param name="Wheel">Rear sprocket, its carrier or the wheel: turns with z₂ links.</param>
/// <param name="Front">Front sprocket: turns with z₁ links.</param>
/// <param name="Chain">The chain itself: comes round after N links.</param>
public sealed record RoundComponents(Wave Wheel, Wave Front, ChainCurve Chain);

/// <summary>The test of one component.</summary>
/// <param name="F">The F statistic.</param>
/// <param name="P">Chance of such an F without any such cause.</param>
/// <param name="Significant">Whether p is below the significance asked for.</param>
public readonly record struct Tested(double F, double P, bool Significant);

/// <summary>An eccentric part.</summary>
/// <param name="Tested">Whether it is there.</param>
/// <param name="Amplitude">Of the slack, half its height.</param>
/// <param name="LoosestAtLink">Where it is loosest, 0 up to its teeth.</param>
public sealed record Wave(Tested Tested, Length Amplitude, double LoosestAtLink);

/// <summary>An uneven chain.</summary>
/// <param name="Tested">Whether it is there.</param>
/// <param name="PeakToPeak">Height of the fitted curve.</param>
/// <param name="TightestAtLink">Where it is tightest, 0 up to the links.</param>
public sealed record ChainCurve(Tested Tested, Length PeakToPeak, double TightestAtLink);
