using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Fluids;

/// <summary>Whether the boiling point measured of a brake fluid is still that of its grade.</summary>
/// <remarks>
/// <para><b>Formula.</b> Fresh when the boiling point reaches the dry minimum of the grade; ageing below that, down to the wet
/// minimum; replace below the wet minimum.</para>
/// <para><b>Units.</b> °C.</para>
/// <para><b>Source.</b> 49 CFR 571.116 (FMVSS 116), S5.1.1 (dry) and S5.1.2 (wet), second-hand copy of the eCFR (brake-fluids.csv). The wet
/// minimum is asked of a fluid humidified until the referee fluid holds 3.7 % water by weight (S6.2). That fluid in service is replaced
/// below the wet minimum is common practice, no source.</para>
/// <para><b>Valid when</b> the boiling point itself was measured, of fluid drawn from the system, best near the caliper. DOT 5 is silicone and
/// takes up no water: its boiling point does not show its age. A shorter interval of the maker comes first, whatever the fluid reads.</para>
/// </remarks>
public static class BrakeFluid
{
    // A minimum written in °F is the same minimum.
    private const double Rounding = 1e-9;

    /// <summary>No brake fluid boils here; 446 °F and more, read as °C, do.</summary>
    private static readonly Temperature Hottest = new(400);

    private static readonly Grade[] Known =
    [
        .. PublishedTable
            .Read("brake-fluids.csv")
            .Rows.Select(r => new Grade(r["grade"], new(r.Number("dry")), new(r.Number("wet")))),
    ];

    /// <summary>The names of the grades: DOT 3, DOT 4, DOT 5, DOT 5.1.</summary>
    public static IReadOnlyList<string> Grades { get; } = [.. Known.Select(g => g.Name)];

    /// <summary>Judges one fluid.</summary>
    /// <param name="grade">One of <see cref="Grades"/>.</param>
    /// <param name="boilingPoint">As measured.</param>
    /// <returns>Refused as <c>notABoilingPoint</c> above 400 °C; both minima still hold.</returns>
    /// <exception cref="ArgumentException">There is no such grade.</exception>
    public static Answer<JudgedFluid> Of(string grade, Temperature boilingPoint)
    {
        var known =
            Array.Find(Known, g => g.Name == grade)
            ?? throw new ArgumentException("There is no grade \"{grade}\".", nameof(grade));
        if (boilingPoint > Hottest)
            return Answer<JudgedFluid>.Refuse(
                "notABoilingPoint",
                $"No brake fluid boils above 400 °C: check whether the tester shows °F, and measure again.",
                new(known.Dry, known.Wet, null)
            );
        return new JudgedFluid(known.Dry, known.Wet, State(known, boilingPoint.DegreesCelsius + Rounding));
    }

    private static FluidState State(Grade grade, double boilsAt)
    {
        if (boilsAt >= grade.Dry.DegreesCelsius)
            return FluidState.Fresh;
        return boilsAt >= grade.Wet.DegreesCelsius ? FluidState.Ageing : FluidState.Replace;
    }

    private sealed record Grade(string Name, Temperature Dry, Temperature Wet);
}

/// <summary>What the boiling point says.</summary>
public enum FluidState
{
    /// <summary>As new.</summary>
    Fresh,

    /// <summary>Has taken up water, but less than the wet test allows for.</summary>
    Ageing,

    /// <summary>Below the wet minimum.</summary>
    Replace,
}

/// <summary>A brake fluid beside what its grade demands.</summary>
/// <param name="DryMinimum">Least boiling point of new fluid.</param>
/// <param name="WetMinimum">Least boiling point of humidified fluid.</param>
/// <param name="State">What follows; null when the reading cannot be one.</param>
public sealed record JudgedFluid(Temperature DryMinimum, Temperature WetMinimum, FluidState? State);
