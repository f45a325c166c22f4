using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>Which of the torque tools at hand to take for a setting.</summary>
/// <remarks>
/// <para><b>Formula.</b> A tool covers max(min, 20 % of max) ≤ setting ≤ max. Of those that cover it, the smallest tolerance, then
/// the smallest max, then the first in the list.</para>
/// <para><b>Units.</b> Setting, min and max as torque; tolerance as a part of the setting.</para>
/// <para><b>Source.</b> ISO 6789:2003 and ISO 6789-1:2017, 5.1.5: deviation is verified from 20 % of the maximum (2017: from the lowest
/// mark); type II class A ±4 % above 10 N·m, ±6 % up to 10 N·m. The tool's own certificate comes before these.</para>
/// <para><b>Valid when</b> the setting is what the scale shows (after any extension), and every tolerance is from a certificate in date.</para>
/// </remarks>
public static class TorqueTool
{
    /// <summary>Below this part of its maximum a tool's deviation is not verified (ISO 6789:2003, 20 %).</summary>
    public const double LowestPart = 0.2;

    // A bound hit exactly in one unit must not be missed in another for the rounding of the conversion.
    private const double ConversionNoise = 1e-9;

    /// <summary>The tool to take.</summary>
    /// <param name="setting">What the scale must show, more than zero.</param>
    /// <param name="tools">The tools at hand.</param>
    /// <returns>Refused as <c>noToolCovers</c>.</returns>
    public static Answer<Tool> For(Torque setting, IReadOnlyList<Tool> tools)
    {
        var best = tools.Where(t => Covers(t, setting)).OrderBy(t => t.Tolerance.Value).ThenBy(t => t.Max.NewtonMetres);
        return best.FirstOrDefault() is { } tool
            ? tool
            : Answer<Tool>.Refuse(
                "noToolCovers",
                $"None of these tools covers the setting between 20 % of its maximum (or its lowest mark) and its maximum: get one that does."
            );
    }

    private static bool Covers(Tool tool, Torque setting)
    {
        var lowest = Math.Max(tool.Min.NewtonMetres, LowestPart * tool.Max.NewtonMetres);
        var noise = ConversionNoise * setting.NewtonMetres;
        return setting.NewtonMetres >= lowest - noise && setting.NewtonMetres <= tool.Max.NewtonMetres + noise;
    }
}

/// <summary>A torque tool.</summary>
/// <param name="Id">Its name in the workshop.</param>
/// <param name="Min">Lowest mark, zero or more.</param>
/// <param name="Max">Highest mark, not below <paramref name="Min"/>.</param>
/// <param name="Tolerance">Permissible deviation as a part of the setting.</param>
public sealed record Tool(string Id, Torque Min, Torque Max, Ratio Tolerance);
