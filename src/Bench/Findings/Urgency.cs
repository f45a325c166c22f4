namespace Witnessmark.Bench.Findings;

/// <summary>How soon a finding has to be put right.</summary>
public enum Urgency
{
    /// <summary>Somebody's safety hangs on it: it holds the machine until the owner has decided.</summary>
    BeforeRiding,

    /// <summary>Wears or spoils something further; holds nothing.</summary>
    ByNextService,

    /// <summary>To be looked at again; holds nothing.</summary>
    KeepAnEyeOn,
}

/// <summary>The urgencies in words, the same in files, on the screen and on paper.</summary>
public static class Urgencies
{
    /// <summary>Each by its words, the most urgent first.</summary>
    public static IReadOnlyDictionary<string, Urgency> ByWords { get; } =
        new Dictionary<string, Urgency>(StringComparer.Ordinal)
        {
            ["before riding"] = Urgency.BeforeRiding,
            ["by next service"] = Urgency.ByNextService,
            ["keep an eye on"] = Urgency.KeepAnEyeOn,
        };

    /// <summary><c>before riding</c>.</summary>
    public static string InWords(this Urgency urgency) => ByWords.First(u => u.Value == urgency).Key;
}
