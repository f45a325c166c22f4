using System.Text.Json;
using System.Text.RegularExpressions;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>The worked examples of docs/handbook are asked as they are printed.</summary>
public partial class PageExampleTests
{
    // Examples print six figures
    private const double Printed = 5e-6;

    private static readonly string _pages = Path.Combine(AppContext.BaseDirectory, "Pages");

    public static IEnumerable<TheoryDataRow<string>> Names =>
        Directory
            .GetFiles(_pages, "*.md")
            .Order(StringComparer.Ordinal)
            .Select(f => new TheoryDataRow<string>(Path.GetFileNameWithoutExtension(f)));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_page_has_an_example_that_gives_what_it_prints(string name)
    {
        var page = File.ReadAllText(Path.Combine(_pages, $"{name}.md"));
        var blocks = Block().Matches(page);
        Assert.True(blocks.Count >= 2 && blocks.Count % 2 == 0, "a given and a gives block in turn");
        for (var i = 0; i < blocks.Count; i += 2)
        {
            Assert.Equal(("given", "gives"), (blocks[i].Groups[1].Value, blocks[i + 1].Groups[1].Value));
            var reply = CaseFiles.Ask(name, blocks[i].Groups[2].Value);
            Same("", CaseFiles.Json(blocks[i + 1].Groups[2].Value), CaseFiles.Json(reply.ToJson().ToJsonString()));
        }
    }

    // The example is gone through with numbers, so that a reader can follow the formula without the program
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_page_works_its_example_out_by_hand(string name) =>
        Assert.Matches(@"\nBy hand: .*\d", File.ReadAllText(Path.Combine(_pages, $"{name}.md")));

    private static void Same(string path, JsonElement printed, JsonElement given)
    {
        Assert.True(printed.ValueKind == given.ValueKind, $"{path}: {given} in place of {printed}");
        switch (printed.ValueKind)
        {
            case JsonValueKind.Object:
                Assert.Equal(Keys(printed), Keys(given));
                foreach (var property in printed.EnumerateObject())
                    Same($"{path}.{property.Name}", property.Value, given.GetProperty(property.Name));
                break;
            case JsonValueKind.Array:
                Assert.Equal(printed.GetArrayLength(), given.GetArrayLength());
                for (var i = 0; i < printed.GetArrayLength(); i++)
                    Same($"{path}.{i}", printed[i], given[i]);
                break;
            case JsonValueKind.Number:
                var (wanted, found) = (printed.GetDouble(), given.GetDouble());
                Assert.True(
                    Math.Abs(wanted - found) <= Printed * Math.Abs(wanted) + 1e-12,
                    $"{path}: {found} in place of {wanted}"
                );
                break;
            default:
                Assert.True(JsonElement.DeepEquals(printed, given), $"{path}: {given} in place of {printed}");
                break;
        }
    }

    private static IEnumerable<string> Keys(JsonElement element) =>
        element.EnumerateObject().Select(p => p.Name).Order();

    [GeneratedRegex("^```json (given|gives)\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
