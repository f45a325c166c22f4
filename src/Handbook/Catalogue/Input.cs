using System.Text.Json;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>One key that a calculation takes, as described to people.</summary>
/// <param name="Name">The key in JSON.</param>
/// <param name="Kind">What may stand there: <c>length, e.g. "50 mm"</c>.</param>
/// <param name="Meaning">What it is, in a few words.</param>
public abstract record Input(string Name, string Kind, string Meaning)
{
    /// <summary>Whether it may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>What holds when it is left out, as text; null when nothing does.</summary>
    public string? Default { get; init; }

    /// <summary>How it is written in JSON.</summary>
    public InputShape Shape { get; init; }

    /// <summary>The words that may stand there; empty where it is no choice.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>What each element of a list is; null where it is no list.</summary>
    public Input? Element { get; init; }

    /// <summary>The keys of the object, or of each object of the list, that stands there.</summary>
    public IReadOnlyList<Input> Fields { get; init; } = [];
}

/// <summary>One key together with how it is read.</summary>
/// <typeparam name="T">What is read.</typeparam>
public sealed record Input<T>(string Name, string Kind, string Meaning, Func<JsonElement, string, T> Read)
    : Input(Name, Kind, Meaning)
{
    private T? fallback;
    private bool hasFallback;

    /// <summary>The same key, but it may be left out and then nothing is known.</summary>
    public Input<T> OrNothing() => this with { Optional = true };

    /// <summary>The same key, but left out it has this value, which <c>describe</c> shows.</summary>
    public Input<T> Or(T value, string shown) =>
        this with
        {
            Optional = true,
            Default = shown,
            fallback = value,
            hasFallback = true,
        };

    internal T Missing() =>
        hasFallback ? fallback! : throw new InvalidOperationException($"{Name} has no default: ask with Maybe or Has.");
}

/// <summary>How an input is written in JSON.</summary>
public enum InputShape
{
    /// <summary>Text: a quantity with its unit, a name, a code, a day.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>true or false.</summary>
    Truth,

    /// <summary>An object.</summary>
    Object,

    /// <summary>A list.</summary>
    List,

    /// <summary>An object whose names the request chooses: <c>{"stand": 1}</c>; people write it as JSON.</summary>
    Names,
}
