using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Catalogue;

public class CalculationsTests
{
    [Fact]
    public void Every_calculation_has_cases() =>
        Assert.Empty(Calculations.All.Select(c => c.Name).Except(CaseFiles.All.Select(c => c.Calculation.Name)));

    [Fact]
    public void Every_calculation_has_a_page_and_every_page_a_calculation() =>
        Assert.Equal(
            Calculations.All.Select(c => c.Name).Order(StringComparer.Ordinal),
            Directory
                .GetFiles(Path.Combine(AppContext.BaseDirectory, "Pages"), "*.md")
                .Select(f => Path.GetFileNameWithoutExtension(f))
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Names_are_unique_and_keys_are_camel_case()
    {
        Assert.Equal(Calculations.All.Count, Calculations.All.Select(c => c.Name).Distinct().Count());
        var keys = Calculations.All.SelectMany(c => c.Takes.Select(t => t.Name).Concat(c.Gives.Select(g => g.Name)));
        Assert.All(keys, key => Assert.Matches("^[a-z][a-zA-Z0-9]*$", key));
    }
}
