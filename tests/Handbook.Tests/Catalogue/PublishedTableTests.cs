namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>Every published table says where it comes from, and every row is whole.</summary>
public class PublishedTableTests
{
    public static TheoryData<string> Tables =>
        [
            .. Directory
                .GetFiles(Path.Combine(AppContext.BaseDirectory, "Published"), "*.csv")
                .Select(f => Path.GetFileName(f)!),
        ];

    [Theory]
    [MemberData(nameof(Tables))]
    public void ATableNamesItsSource(string name)
    {
        var head = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", name))
            .TakeWhile(l => l.StartsWith('#'))
            .ToArray();
        foreach (var word in (string[])["title", "source", "edition", "read", "units"])
            Assert.Contains(head, l => l.StartsWith($"# {word}:", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void EveryRowHasACellForEveryColumn(string name)
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", name))
            .Where(l => !l.StartsWith('#') && l.Length > 0)
            .ToArray();
        Assert.True(rows.Length > 1, "a table without rows");
        Assert.All(rows, r => Assert.Equal(rows[0].Split(',').Length, r.Split(',').Length));
    }
}
