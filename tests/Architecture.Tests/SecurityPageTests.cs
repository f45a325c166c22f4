using System.Text.RegularExpressions;

namespace Witnessmark.Architecture.Tests;

/// <summary><c>docs/security.md</c> says of each requirement once how it stands, counts right, and names only what is there.</summary>
public sealed partial class SecurityPageTests
{
    // OWASP ASVS 5.0.0, levels 1 and 2 together
    private const int Requirements = 253;

    private static readonly string Root = FindRoot(AppContext.BaseDirectory);
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Root, "docs", "security.md"));
    private static readonly Row[] Rows = [.. Lines.Where(IsRow).Select(Read)];

    [Fact]
    public void Every_requirement_stands_in_it_once()
    {
        var numbers = Rows.SelectMany(r => NumbersIn(r.What)).ToList();
        Assert.Empty(numbers.CountBy(n => n).Where(n => n.Value > 1).Select(n => n.Key));
        Assert.Equal(Requirements, numbers.Count);
    }

    [Fact]
    public void Every_row_says_how_it_stands_and_what_shows_it() =>
        Assert.All(
            Rows,
            row =>
            {
                Assert.Matches("^(Met|Gap|Does not apply)\\b", row.How);
                if (Word(row) != "Does not apply")
                    Assert.NotEmpty(row.Shown);
            }
        );

    [Fact]
    public void Its_sums_are_those_of_its_rows()
    {
        var sums = Sums().Match(string.Join('\n', Lines));
        Assert.True(sums.Success, "The head says no sums.");
        Assert.Equal(Count("Met"), sums.Groups["met"].Value);
        Assert.Equal(Count("Gap"), sums.Groups["gaps"].Value);
        Assert.Equal(Count("Does not apply"), sums.Groups["not"].Value);
    }

    [Fact]
    public void Every_gap_is_weighed_at_its_end()
    {
        var end = Lines.SkipWhile(l => l != "## The gaps").SelectMany(NumbersIn).Distinct();
        var gaps = Rows.Where(r => Word(r) == "Gap").SelectMany(r => NumbersIn(r.What));
        Assert.Equal(gaps.Order(StringComparer.Ordinal), end.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_test_that_it_names_is_there()
    {
        var named = Rows.SelectMany(r => TestName().Matches(r.Shown)).Select(m => m.Groups["name"].Value).ToHashSet();
        Assert.NotEmpty(named);
        Assert.Empty(named.Except(TestsInSources()));
    }

    [Fact]
    public void Every_file_that_it_names_is_there()
    {
        var named = Rows.SelectMany(r => FileName().Matches(r.Shown)).Select(m => m.Groups["name"].Value);
        Assert.All(named, name => Assert.True(File.Exists(Path.Combine(Root, name)), $"There is no {name}."));
    }

    private static bool IsRow(string line) =>
        line.StartsWith("| ", StringComparison.Ordinal) && line.Length > 2 && char.IsAsciiDigit(line[2]);

    private static Row Read(string line)
    {
        var cells = line.Split('|');
        Assert.True(cells.Length == 5, $"A row has three cells: {line}");
        return new(cells[1].Trim(), cells[2].Trim(), cells[3].Trim());
    }

    private static string Word(Row row) => State().Match(row.How).Value;

    private static string Count(string word) =>
        $"{Rows.Where(r => Word(r) == word).Sum(r => NumbersIn(r.What).Count())}";

    private static IEnumerable<string> NumbersIn(string text) => Number().Matches(text).Select(m => m.Value);

    /// <summary>All tests of the house, each as <c>Class.Method</c>.</summary>
    private static HashSet<string> TestsInSources()
    {
        var tests = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in Sources())
        {
            var (type, marked) = ("", false);
            foreach (var line in File.ReadLines(file))
            {
                if (TypeHead().Match(line) is { Success: true } head)
                    type = head.Groups["name"].Value;
                else if (TestMark().IsMatch(line))
                    marked = true;
                else if (marked && MethodHead().Match(line) is { Success: true } method)
                {
                    tests.Add($"{type}.{method.Groups["name"].Value}");
                    marked = false;
                }
            }
        }
        return tests;
    }

    private static IEnumerable<string> Sources() =>
        Directory
            .EnumerateFiles(Path.Combine(Root, "tests"), "*.cs", SearchOption.AllDirectories)
            .Where(file =>
                !Path.GetRelativePath(Root, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj")
            );

    private static string FindRoot(string from) =>
        File.Exists(Path.Combine(from, "Witnessmark.slnx"))
            ? from
            : FindRoot(
                Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(from))
                    ?? throw new InvalidOperationException("Witnessmark.slnx stands in no folder above.")
            );

    [GeneratedRegex(@"\b\d+\.\d+\.\d+\b")]
    private static partial Regex Number();

    [GeneratedRegex("^(Met|Gap|Does not apply)")]
    private static partial Regex State();

    [GeneratedRegex(@"\*\*(?<met>\d+) met, (?<gaps>\d+) gaps, (?<not>\d+) that do not apply\*\*")]
    private static partial Regex Sums();

    [GeneratedRegex(@"`(?<name>\w+Tests\.\w+)`")]
    private static partial Regex TestName();

    [GeneratedRegex("`(?<name>(?:src|tests|docs)/[^`]+|Directory\\.[^`]+)`")]
    private static partial Regex FileName();

    // a class within another is none of its own here: its tests would count for the outer one
    [GeneratedRegex(@"^(?:public|internal) (?:\w+ )*class (?<name>\w+)")]
    private static partial Regex TypeHead();

    [GeneratedRegex(@"^\s*\[(?:Fact|Theory|Property)\b")]
    private static partial Regex TestMark();

    [GeneratedRegex(@"^\s+public (?:static )?(?:async )?[\w<>]+ (?<name>\w+)\(")]
    private static partial Regex MethodHead();

    private sealed record Row(string What, string How, string Shown);
}
