using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Stock;

namespace Witnessmark.Tests.Certificates;

/// <summary>The examples of <c>docs/https.md</c>, run by the program on the demo shop; of numbers, days and what is drawn by chance only the form is compared.</summary>
public sealed partial class HttpsPageTests
{
    private static readonly string Page = File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "Guides", "https.md")
    );

    [Fact]
    public void Its_commands_print_what_it_says()
    {
        using var shop = new ShopFolder();
        DemoData.Into(shop.Path);
        var examples = Example().Matches(Page);
        Assert.Equal(3, examples.Count);
        foreach (Match example in examples)
        {
            var words = example.Groups["command"].Value.Split(' ').Select(w => w == "data" ? shop.Path : w);
            var ended = RealProgram.Run("", [.. words]);
            Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
            Assert.Equal(Form(example.Groups["says"].Value), Form(ended.Output));
        }
    }

    /// <summary>The commands that would stay running: with a file in place of the data folder each is understood and ends there.</summary>
    [Fact]
    public void Its_other_commands_are_understood()
    {
        var commands = Text().Matches(Page).SelectMany(m => m.Groups[1].Value.Trim().Split('\n')).ToList();
        Assert.Equal(5, commands.Count);
        using var shop = new ShopFolder();
        foreach (var command in commands)
        {
            var words = command.Split(' ').Skip(1).Select(w => w == "data" ? shop.In("file") : w);
            File.WriteAllText(shop.In("file"), "where the folder should be");
            var ended = RealProgram.Run("", [.. words]);
            Assert.Contains(shop.In("file"), ended.Errors);
        }
    }

    private static string Form(string text) => Number().Replace(Chance().Replace(text.Trim(), "drawn"), "0");

    [GeneratedRegex(@"```console\n\$ witnessmark (?<command>.+)\n(?<says>[^`]+)```")]
    private static partial Regex Example();

    [GeneratedRegex(@"```text\n([^`]+)```")]
    private static partial Regex Text();

    [GeneratedRegex(@"([0-9A-F]{2}:){31}[0-9A-F]{2}|(?<=authority )[0-9a-f]{8}")]
    private static partial Regex Chance();

    [GeneratedRegex(@"\d{4}-\d\d-\d\d|\b\d+(?= days)")]
    private static partial Regex Number();
}
