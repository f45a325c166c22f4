using System.Text.Json.Nodes;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-grade</c>.</summary>
internal static class OilGradeContract
{
    private static readonly Input<DynamicViscosity> Hths = Take.Positive<DynamicViscosity>(
            "hths",
            "viscosity at 150 °C and high shear"
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "oil-grade",
            "Fluids",
            "Which SAE grades the viscosity of an engine oil at 100 °C fits.",
            OilGrade.Edition,
            typeof(OilGrade),
            [ViscosityInputs.At100, Hths],
            [
                new("grades", "list", "every grade that fits, thinnest first; empty when none does"),
                new("edition", "text", "the edition that these follow"),
                new("gradesOf1999", "list", "by the edition of December 1999, on bottles and in manuals of that time"),
            ],
            Grade
        );

    private static Reply Grade(Given given)
    {
        var graded = OilGrade.Of(given.Of(ViscosityInputs.At100), given.Maybe(Hths));
        return new Gives()
            .With("grades", List(graded.Grades))
            .With("edition", OilGrade.Edition)
            .With("gradesOf1999", List(graded.GradesOf1999));
    }

    private static JsonArray List(IEnumerable<string> names) => new([.. names.Select(n => JsonValue.Create(n))]);
}
