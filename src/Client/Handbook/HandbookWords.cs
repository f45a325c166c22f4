using System.Text;

namespace Witnessmark.Client.Handbook;

/// <summary>Words of the handbook in the browser.</summary>
internal static class HandbookWords
{
    public const string Title = "Handbook";
    public const string Find = "Find a calculation";
    public const string FindHint = "slack, torque, tyre, shim";
    public const string Nothing = "No calculation has that in its name or its line.";
    public const string NoSuch = "There is no such calculation";
    public const string Given = "Given";
    public const string Result = "Result";
    public const string WorkOut = "Work it out";
    public const string Example = "Put in the worked example";
    public const string Clear = "Empty the form";
    public const string Page = "Formula, source and a worked example";
    public const string NoPage = "The text of this page is not on this device yet. The calculation works all the same.";
    public const string NotYet = "Nothing worked out yet.";
    public const string Table = "Table";
    public const string MayBeLeftOut = "may be left out";
    public const string Yes = "yes";
    public const string No = "no";
    public const string Changed = "The form has changed since: work it out again.";

    private static readonly Dictionary<string, string> Chapters = new()
    {
        ["FinalDrive"] = "Final drive",
        ["BenchOrder"] = "Bench order",
        ["Due"] = "Due work",
    };

    public static string Chapter(string group) => Chapters.GetValueOrDefault(group, group);

    public static string LeftOut(string value) => $"left out: {value}";

    public static string Add(string name) => $"One more: {Spoken(name)}";

    public static string Remove(string name, int place) => $"Take away {Spoken(name)} {place + 1}";

    /// <summary>A key of the contract as people read it: <c>slackUncertainty</c> becomes "slack uncertainty".</summary>
    public static string Spoken(string key)
    {
        var words = new StringBuilder(key.Length + 4);
        foreach (var letter in key.Replace('-', ' '))
            words.Append(char.IsAsciiLetterUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter);
        return words.ToString();
    }

    public static string SpokenTitle(string key) =>
        Spoken(key) is { Length: > 0 } spoken ? char.ToUpperInvariant(spoken[0]) + spoken[1..] : "";
}
