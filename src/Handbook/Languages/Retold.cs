using System.Collections.Concurrent;

namespace Witnessmark.Handbook.Languages;

/// <summary>
/// Says in a language what was written down in English: a sentence is known again by the words that stand around its arguments. What an entry
/// holds stays as it is; only whoever reads it gets it in another language.
/// </summary>
/// <param name="sentences">The sentences that may stand there, whatever their arguments; what is none of them is said as it stands.</param>
/// <param name="parts">What may stand inside one of them.</param>
public sealed class Retold(IEnumerable<Sentence> sentences, IEnumerable<Sentence>? parts = null)
{
    // a text that stands in the catalogue as it is says more than a pattern around something unknown
    private const int Exact = 3;

    private readonly Pattern[] whole = Patterns(sentences);
    private readonly ConcurrentDictionary<(string, string), string> told = []; // a screen asks for the same ones with every drawing
    private readonly ConcurrentDictionary<string, IReadOnlyList<Sentence>> apart = new(StringComparer.Ordinal);
    private readonly Pattern[] inside = Patterns([.. sentences, .. parts ?? []]);

    /// <summary>What was written, for any reader.</summary>
    /// <param name="written">One or several sentences after each other.</param>
    public Sentence Of(string? written) =>
        written is { Length: > 0 } ? Sentence.By(t => t.Code == "en" ? written : Told(written, t)) : Sentence.Empty;

    /// <summary>The same, each known sentence by itself; whatever begins with none stays in one piece.</summary>
    /// <param name="written">One or several sentences after each other.</param>
    public IReadOnlyList<Sentence> Each(string? written) =>
        written is { Length: > 0 } ? apart.GetOrAdd(written, TakenApart) : [];

    private IReadOnlyList<Sentence> TakenApart(string written)
    {
        List<Sentence> each = [];
        for (var left = written; left.Length > 0; )
        {
            var end = Ends(left)
                .FirstOrDefault(
                    e => Whole(left[..e], whole, Tongue.English, new(StringComparer.Ordinal)) is not null,
                    left.Length
                );
            each.Add(Of(left[..end]));
            left = left[end..].TrimStart();
        }
        return each;
    }

    // within a text the same piece comes up again in every way to take it apart: not kept, a text with many of the words that part it would take for ever
    private string Told(string written, Tongue tongue) =>
        told.GetOrAdd(
            (tongue.Code, written),
            _ => string.Join(' ', Sentences(written, tongue, new(StringComparer.Ordinal)))
        );

    private IEnumerable<string> Sentences(string written, Tongue tongue, Dictionary<string, (string, int)> known)
    {
        for (var left = written; left.Length > 0; )
        {
            var ends = Ends(left);
            var end = ends.FirstOrDefault(e => Whole(left[..e], whole, tongue, known) is not null, ends[0]);
            yield return Whole(left[..end], whole, tongue, known)?.Said ?? left[..end];
            left = left[end..].TrimStart();
        }
    }

    private static Pattern[] Patterns(IEnumerable<Sentence> sentences) =>
        [.. sentences.Select(Pattern.Of).OrderByDescending(p => p.Letters)];

    private static List<int> Ends(string text) =>
        [.. Enumerable.Range(1, text.Length).Where(i => i == text.Length || (text[i - 1] == '.' && text[i] == ' '))];

    /// <summary>The text as one sentence, with how many of its arguments are known; null when it is none.</summary>
    private (string Said, int Known)? Whole(
        string text,
        Pattern[] patterns,
        Tongue tongue,
        Dictionary<string, (string, int)> known
    )
    {
        if (tongue.Text(text, null) is not null)
            return (tongue.Word(text), Exact);
        foreach (var pattern in patterns)
            if (
                pattern.Splits(text).Select(parts => Filled(pattern, parts, tongue, known)).ToList() is
                { Count: > 0 } all
            )
                return all.MaxBy(a => a.Known);
        return null;
    }

    private (string Said, int Known) Filled(
        Pattern pattern,
        string[] parts,
        Tongue tongue,
        Dictionary<string, (string, int)> known
    )
    {
        var said = parts
            .Select((part, place) => pattern.Stays(place) ? (Said: part, Known: 0) : Part(part, tongue, known))
            .ToArray();
        return (pattern.Fill(parts, [.. said.Select(s => s.Said)], tongue), 1 + said.Sum(s => s.Known));
    }

    private (string Said, int Known) Part(string text, Tongue tongue, Dictionary<string, (string, int)> known)
    {
        if (!known.TryGetValue(text, out var part))
            known[text] = part = Unkept(text, tongue, known);
        return part;
    }

    private (string Said, int Known) Unkept(string text, Tongue tongue, Dictionary<string, (string, int)> known)
    {
        if (text.Length == 0)
            return (text, 1);
        if (EnglishFigures.Day(text, tongue) is { } day)
            return (day, 2);
        if (EnglishFigures.Amount(text, tongue) is { } amount)
            return (amount, 2);
        // English begins it small inside another one
        var begun = Whole(char.ToUpperInvariant(text[0]) + text[1..], inside, tongue, known);
        var asIs = Whole(text, inside, tongue, known);
        return begun is { } other && other.Known > (asIs?.Known ?? 0)
            ? (tongue.Inside(other.Said), other.Known)
            : asIs ?? (text, 0);
    }
}
