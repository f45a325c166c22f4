using System.Text;

namespace Witnessmark.Client.Handbook;

/// <summary>Words of the handbook in the browser.</summary>
internal static class HandbookWords
{
    public static string Title => Say($"Handbook");
    public static string Find => Say($"Find a calculation");
    public static string FindHint => Say($"slack, torque, tyre, shim");
    public static string Nothing => Say($"No calculation has that in its name or its line.");
    public static string NoSuch => Say($"There is no such calculation");
    public static string Given => Say($"Given");
    public static string Result => Say($"Result");
    public static string WorkOut => Say($"Work it out");
    public static string Example => Say($"Put in the worked example");
    public static string Clear => Say($"Empty the form");
    public static string Page => Say($"Formula, source and a worked example");
    public static string NoPage =>
        Say($"The text of this page is not on this device yet. The calculation works all the same.");
    public static string NotYet => Say($"Nothing worked out yet.");
    public static string Table => Say($"Table");
    public static string MayBeLeftOut => Say($"may be left out");
    public static string Yes => Say($"yes");
    public static string No => Say($"no");
    public static string Changed => Say($"The form has changed since: work it out again.");

    private static Dictionary<string, string> Chapters =>
        new()
        {
            ["FinalDrive"] = Say($"Final drive"),
            ["BenchOrder"] = Say($"Bench order"),
            ["Due"] = Say($"Due work"),
            ["Fasteners"] = Say($"Fasteners"),
            ["Fluids"] = Say($"Fluids"),
            ["Brakes"] = Say($"Brakes"),
            ["Tyres"] = Say($"Tyres"),
            ["Wheels"] = Say($"Wheels"),
            ["Chassis"] = Say($"Chassis"),
            ["Engine"] = Say($"Engine"),
            ["Controls"] = Say($"Controls"),
            ["Electrics"] = Say($"Electrics"),
            ["Lights"] = Say($"Lights"),
            ["Identity"] = Say($"Identity"),
            ["Wear"] = Say($"Wear"),
            ["Sound"] = Say($"Sound"),
            ["Measuring"] = Say($"Measuring"),
        };

    public static string Chapter(string group) => Chapters.GetValueOrDefault(group, group);

    public static string LeftOut(string value) => Say($"left out: {value}");

    public static string Add(string name) => Say($"One more: {Spoken(name)}");

    public static string Remove(string name, int place) => Say($"Take away {Spoken(name)} {place + 1}");

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
