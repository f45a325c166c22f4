namespace Witnessmark.Handbook.Languages;

/// <summary>A sentence as it is known again: its literal parts, and how it is said once its arguments are found.</summary>
internal sealed class Pattern
{
    private readonly Sentence sentence;
    private readonly string[] literals;

    private Pattern(Sentence sentence, string[] literals) => (this.sentence, this.literals) = (sentence, literals);

    /// <summary>How much of it is its own words: of two that fit, the one with more is meant.</summary>
    public int Letters => literals.Sum(l => l.Length);

    /// <summary>Whether the argument at a place is a name, which is not looked up.</summary>
    public bool Stays(int place) => sentence.Stays(place);

    public static Pattern Of(Sentence sentence) => new(sentence, Template.Literals(sentence.Key));

    /// <summary>Every way to take a text apart into the arguments.</summary>
    public IEnumerable<string[]> Splits(string text) =>
        literals.Length > 1 && text.StartsWith(literals[0], StringComparison.Ordinal)
            ? From(text[literals[0].Length..], 1)
            : [];

    /// <summary>The sentence with arguments that are in the language already.</summary>
    /// <param name="english">The arguments as they were written, the first of which may be how many.</param>
    /// <param name="said">The arguments.</param>
    /// <param name="tongue">The language.</param>
    public string Fill(string[] english, string[] said, Tongue tongue)
    {
        var many = int.TryParse(english[0], out var count) ? count : 2;
        var text = sentence.One is { } one ? tongue.Plural(many, one, sentence.Key) : tongue.Text(sentence.Key, null);
        return Template.Fill(text ?? sentence.Key, said);
    }

    private IEnumerable<string[]> From(string text, int next)
    {
        var literal = literals[next];
        if (next == literals.Length - 1)
        {
            if (text.EndsWith(literal, StringComparison.Ordinal))
                yield return [text[..^literal.Length]];
            yield break;
        }
        for (
            var at = text.IndexOf(literal, StringComparison.Ordinal);
            at >= 0;
            at = at < text.Length ? text.IndexOf(literal, at + 1, StringComparison.Ordinal) : -1
        )
            foreach (var rest in From(text[(at + literal.Length)..], next + 1))
                yield return [text[..at], .. rest];
    }
}
