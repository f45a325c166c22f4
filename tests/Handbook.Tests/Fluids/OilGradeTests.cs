using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilGradeTests
{
    private static IReadOnlyList<string> Grades(double at100, double? hths = null) =>
        OilGrade.Of(new(at100), hths is { } h ? new DynamicViscosity(h) : null).Grades;

    private static TheoryData<string, double, double, double> Rows(string table) =>
        [
            .. PublishedRows
                .Of(table)
                .Where(r => r.Text("viscosity100Max").Length > 0)
                .Select(r =>
                    (r.Text("grade"), r.Number("viscosity100Min"), r.Number("viscosity100Max"), r.Number("hthsMin"))
                ),
        ];

    public static TheoryData<string, double, double, double> Of2015 => Rows("oil-grades.csv");

    public static TheoryData<string, double, double, double> Of1999 => Rows("oil-grades-1999.csv");

    // SAE J300 (January 2015), table 1: the least belongs to the grade, the greatest does not
    [Theory]
    [MemberData(nameof(Of2015))]
    public void A_row_holds_its_least_and_not_its_greatest(string grade, double min, double max, double hths)
    {
        Assert.Contains(grade, Grades(min));
        Assert.Contains(grade, Grades(min, hths));
        Assert.Contains(grade, Grades(max - 1e-9));
        Assert.DoesNotContain(grade, Grades(max));
        Assert.DoesNotContain(grade, Grades(min - 1e-9));
        Assert.DoesNotContain(grade, Grades(min, (grade == "40" ? 3.5 : hths) - 1e-9));
    }

    // SAE J300 (December 1999)
    [Theory]
    [MemberData(nameof(Of1999))]
    public void The_older_edition_stands_beside(string grade, double min, double max, double hths)
    {
        Assert.Contains(grade, OilGrade.Of(new(min), new DynamicViscosity(hths)).GradesOf1999);
        Assert.DoesNotContain(grade, OilGrade.Of(new(max)).GradesOf1999);
        Assert.DoesNotContain(
            grade,
            OilGrade.Of(new(min), new DynamicViscosity((grade == "40" ? 2.9 : hths) - 1e-9)).GradesOf1999
        );
    }

    [Fact]
    public void The_tables_are_whole()
    {
        Assert.Equal(["8", "12", "16", "20", "30", "40", "40", "50", "60"], Of2015.Select(r => r.Data.Item1));
        Assert.Equal(["20", "30", "40", "40", "50", "60"], Of1999.Select(r => r.Data.Item1));
    }

    [Fact]
    public void A_grade_is_named_once() => Assert.Equal(["40"], Grades(14, 3.7));

    [Property(MaxTest = 500)]
    public void From_the_first_to_the_last_every_viscosity_has_a_grade_and_hths_only_takes_away(uint a, uint b)
    {
        var at100 = Chance.Between(4, 26, a);
        var all = Grades(at100);
        Assert.NotEmpty(all);
        Assert.Subset(all.ToHashSet(), Grades(at100, Chance.Between(1, 5, b)).ToHashSet());
    }
}
