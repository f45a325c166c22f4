using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>Whether a machine has a point.</summary>
public enum Has
{
    /// <summary>It has it.</summary>
    Yes,

    /// <summary>It has not: one of the conditions fails.</summary>
    No,

    /// <summary>Nobody said how it is built.</summary>
    NotSaid,
}

/// <summary>Which machines have a point: those that fit every condition.</summary>
/// <param name="Conditions">Words allowed by the trait's name: <c>drive</c> = chain, belt; empty: every machine has it.</param>
public sealed record OnlyFor(IReadOnlyDictionary<string, IReadOnlyList<string>> Conditions)
{
    private static readonly IReadOnlyList<string> Drives = ["chain", "belt", "shaft"];

    /// <summary>Names of all traits that a condition can ask for.</summary>
    public static IReadOnlyList<string> Traits { get; } =
    ["drive", .. MachineFacts.Traits.Keys, .. MachineFacts.Fitted];

    /// <summary>Whether a machine with these traits has the point. A condition that fails decides, whatever is not said.</summary>
    /// <param name="trait">The machine's trait by name, null where nobody said.</param>
    public Has On(Func<string, string?> trait) =>
        Conditions.Any(c => trait(c.Key) is { } word && !c.Value.Contains(word)) ? Has.No
        : Conditions.Any(c => trait(c.Key) is null) ? Has.NotSaid
        : Has.Yes;

    /// <summary>The conditions in words: <c>drive chain or belt, kind quad</c>; empty when every machine has it.</summary>
    public string InWords =>
        string.Join(
            ", ",
            Conditions.Select(c =>
                c.Value is ["true"] ? c.Key
                : c.Value is ["false"] ? $"no {c.Key}"
                : $"{c.Key} {string.Join(" or ", c.Value)}"
            )
        );

    /// <summary>Words that a trait may have.</summary>
    public static IReadOnlyList<string> WordsOf(string trait) =>
        trait == "drive" ? Drives : MachineFacts.Traits.GetValueOrDefault(trait) ?? ["true", "false"];

    internal static OnlyFor Read(TomlTable? table)
    {
        Dictionary<string, IReadOnlyList<string>> conditions = [];
        foreach (var trait in Traits.Except(MachineFacts.Fitted))
            if (table?.Words(trait, WordsOf(trait)) is { Count: > 0 } words)
                conditions[trait] = words;
        foreach (var fitted in MachineFacts.Fitted)
            if (table?.TruthOrNothing(fitted) is { } truth)
                conditions[fitted] = [truth ? "true" : "false"];
        table?.NoOtherKeys();
        return new(conditions);
    }
}
