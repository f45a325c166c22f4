using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>What to set on the torque wrench when an extension is fitted or a lock nut turns hard.</summary>
/// <remarks>
/// <para><b>Formula.</b> factor = L/(L + E·cos θ); setting = (torque + prevailing, unless the figure includes it)·factor. Half-widths at
/// the nut, T being the torque there: tool p·T; length setting·E·cos θ/L²·ΔL; extension setting·cos θ/L·ΔE; angle
/// setting·E/L·max|cos(θ ± Δθ) − cos θ|. Worst case = their sum, standard uncertainty = √(Σ half-width²/3).</para>
/// <para><b>Units.</b> Torque in N·m, lengths in mm, angles in rad; L from the drive square to the middle of the hand, E from the drive
/// square to the nut, θ between the extension and the wrench: 0 straight on, 90° sideways, 180° back under the handle.</para>
/// <para><b>Source.</b> Moment balance of wrench and extension, own derivation; the same formula in FAA AC 43.13-1B, figure 7-2, and
/// US Army TM 1-1500-204-23-9, figure 8-16, whose numbers are test cases. Half-width over √3: JCGM 100:2008 (GUM) 4.3.7.</para>
/// <para><b>Valid when</b> the extension lies in the plane of the wrench and the hand pulls at L, square to the handle. An extension bar
/// in line with the nut needs no correction. Prevailing torque is read while the nut runs down, before it seats. The maker's
/// own procedure goes first.</para>
/// </remarks>
public static class TorqueSetting
{
    /// <summary>The setting for a torque at the nut.</summary>
    /// <param name="torque">Torque of the figure, more than zero.</param>
    /// <param name="extension">What is fitted between wrench and nut, or null.</param>
    /// <param name="prevailing">Running torque to add, zero when the figure includes it.</param>
    /// <param name="errors">Half-widths of what is not exactly known, or null when nobody asks for the uncertainty.</param>
    /// <exception cref="ArgumentOutOfRangeException">The extension reaches back to the hand or beyond it.</exception>
    public static WrenchSetting For(
        Torque torque,
        WrenchExtension? extension = null,
        Torque prevailing = default,
        SettingErrors? errors = null
    )
    {
        if (extension is { ReachesPastTheHand: true })
            throw new ArgumentOutOfRangeException(nameof(extension), extension, "It reaches back to the hand.");
        var atNut = torque + prevailing;
        var factor = extension?.Factor ?? 1;
        var setting = atNut * factor;
        if (errors is not { } e)
            return new(setting, factor, null, null);
        double[] halves = [atNut.NewtonMetres * e.Tool.Value, .. HalfWidths(setting, extension, e)];
        return new(setting, factor, new(Math.Sqrt(halves.Sum(h => h * h) / 3)), new(halves.Sum()));
    }

    private static double[] HalfWidths(Torque setting, WrenchExtension? fitted, SettingErrors errors)
    {
        if (fitted is not { } x)
            return [];
        var (angle, cos) = (x.Angle.Radians, x.Cosine);
        var swing = Math.Max(
            Math.Abs(Math.Cos(angle + errors.Angle.Radians) - cos),
            Math.Abs(Math.Cos(angle - errors.Angle.Radians) - cos)
        );
        var t = setting.NewtonMetres;
        var perLength = 1 / x.WrenchLength.Millimetres;
        return
        [
            t * (x.Length / x.WrenchLength) * Math.Abs(cos) * errors.Length.Millimetres * perLength,
            t * Math.Abs(cos) * errors.Extension.Millimetres * perLength,
            t * (x.Length / x.WrenchLength) * swing,
        ];
    }
}

/// <summary>A crow-foot or another extension across the wrench.</summary>
/// <param name="WrenchLength">L, drive square to the middle of the hand, more than zero.</param>
/// <param name="Length">E, drive square to the nut, zero or more.</param>
/// <param name="Angle">θ, 0 straight on.</param>
public readonly record struct WrenchExtension(Length WrenchLength, Length Length, Angle Angle)
{
    /// <summary>Whether the nut would lie at the hand or behind it: no pull there turns it the right way.</summary>
    public bool ReachesPastTheHand => WrenchLength.Millimetres + Length.Millimetres * Cosine <= 0;

    internal double Cosine => Math.Cos(Angle.Radians);

    internal double Factor => WrenchLength.Millimetres / (WrenchLength.Millimetres + Length.Millimetres * Cosine);
}

/// <summary>Half-widths of what is not exactly known; zero where nothing is said.</summary>
/// <param name="Tool">Of the wrench, as a part of the torque.</param>
/// <param name="Length">Of the place of the hand.</param>
/// <param name="Extension">Of the extension's length.</param>
/// <param name="Angle">Of its angle.</param>
public readonly record struct SettingErrors(Ratio Tool, Length Length, Length Extension, Angle Angle);

/// <summary>What to set and how well the nut gets its torque.</summary>
/// <param name="Setting">On the wrench.</param>
/// <param name="Factor">Of the extension.</param>
/// <param name="StandardUncertainty">Of the torque at the nut, one standard deviation, or null.</param>
/// <param name="WorstCase">All half-widths added, or null.</param>
public sealed record WrenchSetting(Torque Setting, double Factor, Torque? StandardUncertainty, Torque? WorstCase);
