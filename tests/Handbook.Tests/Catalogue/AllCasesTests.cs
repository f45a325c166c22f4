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
}
