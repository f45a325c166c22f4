using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Catalogue;

public class AllCasesTests
{
    // Two cases of one file may share a name, so the number tells them apart.
    public static IEnumerable<TheoryDataRow<int>> Numbers =>
        CaseFiles.All.Select(
            (c, i) => new TheoryDataRow<int>(i) { TestDisplayName = $"{c.Calculation.Name}: {c.Name} (case {i})" }
        );

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Reply_is_as_expected(int number) => Assert.Empty(CaseFiles.All[number].Differences());

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Every_output_is_declared_in_the_contract(int number)
    {
        var check = CaseFiles.All[number];
        var outputs = check.Calculation.Ask(check.Given).Outputs!.Select(o => o.Key);
        Assert.Subset(check.Calculation.Gives.Select(g => g.Name).ToHashSet(), outputs.ToHashSet());
    }

    [Fact]
    public void Every_calculation_has_cases() =>
        Assert.Empty(Calculations.All.Select(c => c.Name).Except(CaseFiles.All.Select(c => c.Calculation.Name)));

    [Fact]
    public void Names_are_unique_and_keys_are_camel_case()
    {
        Assert.Equal(Calculations.All.Count, Calculations.All.Select(c => c.Name).Distinct().Count());
        var keys = Calculations.All.SelectMany(c => c.Takes.Select(t => t.Name).Concat(c.Gives.Select(g => g.Name)));
        Assert.All(keys, key => Assert.Matches("^[a-z][a-zA-Z0-9]*$", key));
    }
}
