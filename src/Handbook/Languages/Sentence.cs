using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json.Serialization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Languages;

/// <summary>
/// A sentence that can still be said in any language. Written as an interpolated string, <c>Sentence x = $"{litres} L added"</c>, it keeps its
/// literal parts as the key <c>{0} L added</c> and its arguments, and is put into words at the edge, where it is known who reads.
/// </summary>
/// <remarks>
/// As a plain string it is English as files have it (<see cref="Tongue.Written"/>). Nothing turns a plain string into a sentence by itself: what was put together from pieces before could not
/// be translated any more, and the compiler finds such places. A text that comes as data is taken with <see cref="Of"/>.
/// </remarks>
[InterpolatedStringHandler]
[JsonConverter(typeof(SentenceJson))]
public sealed class Sentence : IEquatable<Sentence>
{
    private readonly StringBuilder key;
    private readonly List<Argument> arguments;
    private readonly Func<Tongue, string>? spoken;

    /// <summary>A sentence to be written part by part; the compiler does it for an interpolated string.</summary>
    /// <param name="literalLength">Letters of the literal parts.</param>
    /// <param name="formattedCount">Arguments.</param>
    public Sentence(int literalLength, int formattedCount)
    {
        key = new(literalLength + 3 * formattedCount);
        arguments = new(formattedCount);
    }

    private Sentence(Func<Tongue, string> spoken)
        : this(0, 0) => this.spoken = spoken;

    private Sentence(Sentence like, Func<Tongue, string> spoken) =>
        (key, arguments, this.spoken) = (like.key, like.arguments, spoken);

    /// <summary>Nothing said.</summary>
    public static Sentence Empty { get; } = new(0, 0);

    /// <summary>The text under which a catalogue has the sentence: places of the arguments as {0}, {1}.</summary>
    public string Key => key.ToString();

    /// <summary>The key for one, where it is said of several.</summary>
    internal string? One { get; private init; }

    /// <summary>Whether the argument at a place stands there as it is in every language.</summary>
    internal bool Stays(int place) => arguments[place].Value is AsItStands;

    /// <summary>Letters of the English sentence.</summary>
    public int Length => ToString().Length;

    /// <summary>A text that comes as data, from a file or a person: said in the language where a catalogue has it, else as it is.</summary>
    /// <param name="text">The text.</param>
    public static Sentence Of(string? text) => text is { Length: > 0 } ? new(t => t.Word(text)) : Empty;

    /// <summary>What is known how to be said only with who reads it.</summary>
    /// <param name="said">The words for a reader.</param>
    public static Sentence By(Func<Tongue, string> said) => new(said);

    /// <summary>The same with every quantity as it was read or printed, whatever units the reader wants.</summary>
    public Sentence AsWritten() => new(t => In(t.With(UnitSystem.AsWritten)));

    /// <summary>One sentence for one, another one for many.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">For exactly one.</param>
    /// <param name="many">For any other number; holds all arguments.</param>
    public static Sentence Count(int count, Sentence one, Sentence many) =>
        new(
            many,
            t => t.Plural(count, one.Key, many.Key) is { } text ? many.Fill(text, t) : (count == 1 ? one : many).In(t)
        )
        {
            One = one.Key,
        };

    /// <summary>Several after each other.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="between">What stands between them.</param>
    public static Sentence List(IEnumerable<Sentence> parts, string between = ", ")
    {
        Sentence[] all = [.. parts];
        return new(t => string.Join(between, all.Select(p => p.In(t))));
    }

    /// <inheritdoc cref="List(IEnumerable{Sentence}, string)"/>
    public static Sentence List(IEnumerable<string> parts, string between = ", ") => List(parts.Select(Of), between);

    /// <summary>Several after each other with a blank between them; what is nothing or empty is left out.</summary>
    /// <param name="parts">The parts.</param>
    public static Sentence Line(params Sentence?[] parts) => Line(parts.AsEnumerable());

    /// <inheritdoc cref="Line(Sentence?[])"/>
    public static Sentence Line(IEnumerable<Sentence?> parts)
    {
        Sentence[] all = [.. parts.OfType<Sentence>()];
        return new(t => string.Join(' ', all.Select(p => p.In(t)).Where(s => s.Length > 0)));
    }

    /// <summary>A number written in English, <c>-0.25</c>: its digits stay, its mark is the language's.</summary>
    /// <param name="digits">The number as English writes it.</param>
    public static Sentence Number(string digits) => new(t => t.Number(digits));

    /// <summary>A day, as people write it there.</summary>
    /// <param name="form">Which of the forms that a language has.</param>
    /// <param name="day">The day.</param>
    public static Sentence Day(DayForm form, DateOnly day) => new(t => t.Day(form, day));

    /// <summary>The same, once it is in a language written another way.</summary>
    /// <param name="how">What is done to the words.</param>
    public Sentence Written(Func<string, string> how) => new(t => how(In(t)));

    /// <summary>The same inside another sentence: English begins it small there, other languages leave it.</summary>
    public Sentence Inside() => new(t => t.Inside(In(t)));

    /// <summary>The same with a full stop where it has no end.</summary>
    public Sentence Ended() => new(t => In(t) is [.., '.' or '!' or '?'] said ? said : $"{In(t)}.");

    /// <summary>The same without a full stop.</summary>
    public Sentence Open() => new(t => In(t).TrimEnd('.'));

    /// <summary>The same at the beginning of a line: with a capital letter.</summary>
    public Sentence Begun() =>
        new(t => In(t) is { Length: > 0 } said ? char.ToUpperInvariant(said[0]) + said[1..] : "");

    /// <summary>The same sentence where one English word needs different words elsewhere.</summary>
    /// <param name="context">What is meant, in a word.</param>
    public Sentence Meaning(string context) => new(this, t => Fill(t.Text(Key, context) ?? Key, t));

    /// <summary>The sentence in a language.</summary>
    /// <param name="tongue">The language.</param>
    public string In(Tongue tongue) => spoken is null ? Fill(tongue.Text(Key, null) ?? Key, tongue) : spoken(tongue);

    /// <summary>Adds a literal part.</summary>
    /// <param name="text">The part.</param>
    public void AppendLiteral(string text) =>
        key.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));

    /// <summary>Adds an argument.</summary>
    /// <typeparam name="T">Its type.</typeparam>
    /// <param name="value">Its value.</param>
    /// <param name="format">Its form, as the invariant culture writes it.</param>
    public void AppendFormatted<T>(T value, string? format = null)
    {
        key.Append('{').Append(arguments.Count).Append('}');
        arguments.Add(new(value, format));
    }

    /// <inheritdoc/>
    public bool Equals(Sentence? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>In English, as it is written down.</summary>
    public override string ToString() => In(Tongue.Written);

    /// <summary>In English.</summary>
    /// <param name="sentence">The sentence.</param>
    [return: System.Diagnostics.CodeAnalysis.NotNullIfNotNull(nameof(sentence))]
    public static implicit operator string?(Sentence? sentence) => sentence?.ToString();

    /// <summary>Whether both say the same in English.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">The other.</param>
    public static bool operator ==(Sentence? one, Sentence? other) => Equals(one, other);

    /// <summary>Whether they say different things in English.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">The other.</param>
    public static bool operator !=(Sentence? one, Sentence? other) => !Equals(one, other);

    private string Fill(string text, Tongue tongue) => Template.Fill(text, arguments, tongue);
}
