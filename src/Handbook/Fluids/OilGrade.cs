using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Fluids;

/// <summary>Which summer grades (the number after the W) the viscosity of an engine oil at 100 °C fits.</summary>
/// <remarks>
/// <para><b>Formula.</b> A grade fits when its least viscosity ≤ ν₁₀₀ &lt; its greatest and, where HTHS is known, HTHS ≥ its least. For 40
/// the smaller least HTHS counts, that of 0W-40, 5W-40 and 10W-40.</para>
/// <para><b>Units.</b> ν₁₀₀ in mm²/s at 100 °C; HTHS, the viscosity at 150 °C and high shear, in mPa·s.</para>
/// <para><b>Source.</b> SAE J300, edition of January 2015 (oil-grades.csv, second-hand copy), and beside it the edition of December 1999
/// (oil-grades-1999.csv), which draws 20 and 40 otherwise.</para>
/// <para><b>Valid when</b> the oil is new. Grades 8 to 20 overlap: without HTHS all that fit are named. The winter grade needs the cold
/// tests and cannot be told from ν₁₀₀. The grade says nothing about the clutch (JASO T 903) or the quality class: the maker's manual does.</para>
/// </remarks>
public static class OilGrade
{
    /// <summary>The edition that the grades follow.</summary>
    public const string Edition = "SAE J300, January 2015";

    private static readonly Grade[] Grades = Read("oil-grades.csv");
    private static readonly Grade[] GradesOf1999 = Read("oil-grades-1999.csv");

    /// <summary>All grades that fit, thinnest first.</summary>
    /// <param name="at100">Kinematic viscosity at 100 °C.</param>
    /// <param name="hths">Viscosity at 150 °C and high shear, or null when nobody knows it.</param>
    public static GradedOil Of(Viscosity at100, DynamicViscosity? hths = null) =>
        new(Fitting(Grades, at100, hths), Fitting(GradesOf1999, at100, hths));

    private static string[] Fitting(Grade[] grades, Viscosity at100, DynamicViscosity? hths) =>
        [.. grades.Where(g => g.Fits(at100, hths)).Select(g => g.Name).Distinct()];

    // Rows without a greatest viscosity are the winter grades
    private static Grade[] Read(string table) =>
        [
            .. PublishedTable
                .Read(table)
                .Rows.Where(r => r.Maybe("viscosity100Max") is not null)
                .Select(r => new Grade(
                    r["grade"],
                    new(r.Number("viscosity100Min")),
                    new(r.Number("viscosity100Max")),
                    new(r.Number("hthsMin"))
                )),
        ];

    private sealed record Grade(string Name, Viscosity Min, Viscosity Max, DynamicViscosity HthsMin)
    {
        public bool Fits(Viscosity at100, DynamicViscosity? hths) =>
            at100 >= Min && at100 < Max && (hths is not { } known || known >= HthsMin);
    }
}

/// <summary>The grades of one oil; none when it is too thin, too thick or too weak under shear.</summary>
/// <param name="Grades">By the edition that is followed.</param>
/// <param name="GradesOf1999">By the edition of December 1999, for bottles and manuals of that time.</param>
public sealed record GradedOil(IReadOnlyList<string> Grades, IReadOnlyList<string> GradesOf1999);
