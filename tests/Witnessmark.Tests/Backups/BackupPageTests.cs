using System.Text.RegularExpressions;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Backups;

/// <summary>The examples of <c>docs/backup.md</c>, run by the program on a served demo; of numbers, days and file systems only the form is compared.</summary>
public sealed partial class BackupPageTests
{
    [Fact]
    public void Its_commands_print_what_it_says()
    {
        using var folder = new TempFolder();
        using var shop = RunningShop.Serve(Path.Combine(folder.Path, "data"));
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "backup.md"));
        var examples = Example().Matches(page);
        Assert.Equal(4, examples.Count);
        var backup = "";
        foreach (
            var example in examples.OrderBy(e =>
                !e.Groups["command"].Value.StartsWith("backup ", StringComparison.Ordinal)
            )
        )
        {
            var printed = Printed(folder.Path, Backup().Replace(example.Groups["command"].Value, backup));
            if (backup.Length == 0)
                backup = Backup().Match(printed).Value;
            Assert.Equal(Form(example.Groups["says"].Value), Form(printed.Replace(folder.Path + "/", "")));
        }
    }

    private static string Form(string text) => Place().Replace(Number().Replace(text.Trim(), "0"), "disk.");

    private static string Printed(string folder, string command)
    {
        var words = command
            .Split(' ')
            .Select(w =>
                w.StartsWith("kept", StringComparison.Ordinal) || w is "data" or "again" ? Path.Combine(folder, w) : w
            );
        using var process = RunningShop.Start([.. words]);
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return said;
    }

    [GeneratedRegex(@"```console\n\$ witnessmark (?<command>.+)\n(?<says>[^`]+)```")]
    private static partial Regex Example();

    [GeneratedRegex(@"witnessmark-\d{4}-\d\d-\d\dT\d{6}Z")]
    private static partial Regex Backup();

    [GeneratedRegex(@"\d[\d.:-]*")]
    private static partial Regex Number();

    [GeneratedRegex(@"disk \(.+\)\.")]
    private static partial Regex Place();
}
