using System.Text;

namespace Witnessmark.Handbook.Languages;

/// <summary>Reads a catalogue in the gettext PO format: msgctxt, msgid, msgid_plural, msgstr; comments and the header are passed over.</summary>
/// <remarks><b>Source.</b> GNU gettext manual, "The Format of PO Files".</remarks>
public static class PoFile
{
    /// <summary>The entries in order.</summary>
    /// <param name="text">The whole file.</param>
    /// <exception cref="FormatException">A line is none of the format.</exception>
    public static IReadOnlyList<PoEntry> Read(string text)
    {
        var entries = new List<PoEntry>();
        var draft = new Draft();
        var at = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            at++;
            var trimmed = line.Trim();
            if (trimmed.Length == 0 || trimmed[0] == '#')
                continue;
            if (trimmed[0] == '"')
                draft.Go(Unquoted(trimmed, at));
            else
                Begin(trimmed, at, ref draft, entries);
        }
        draft.End(entries);
        return entries;
    }

    private static void Begin(ReadOnlySpan<char> line, int at, ref Draft draft, List<PoEntry> entries)
    {
        var blank = line.IndexOf(' ');
        var word = blank < 0 ? line : line[..blank];
        if (draft.Answered && word is "msgctxt" or "msgid")
        {
            draft.End(entries);
            draft = new();
        }
        draft.Start(word, at);
        draft.Go(Unquoted(blank < 0 ? "" : line[blank..].Trim(), at));
    }

    private static string Unquoted(ReadOnlySpan<char> quoted, int at)
    {
        if (quoted.Length < 2 || quoted[0] != '"' || quoted[^1] != '"')
            throw new FormatException($"Line {at}: a text in quotation marks is missing.");
        var inner = quoted[1..^1];
        if (!inner.Contains('\\'))
            return inner.ToString();
        var text = new StringBuilder(inner.Length);
        for (var i = 0; i < inner.Length; i++)
            text.Append(inner[i] == '\\' && i + 1 < inner.Length ? Escaped(inner[++i]) : inner[i]);
        return text.ToString();
    }

    private static char Escaped(char letter) =>
        letter switch
        {
            'n' => '\n',
            't' => '\t',
            _ => letter,
        };

    private sealed class Draft
    {
        private readonly List<StringBuilder> texts = [];
        private StringBuilder? context;
        private StringBuilder? key;
        private StringBuilder? many;
        private StringBuilder now = new();
        private int line;

        public bool Answered => texts.Count > 0;

        public void Start(ReadOnlySpan<char> word, int at)
        {
            now = new();
            if (line == 0)
                line = at;
            if (word is "msgctxt")
                context = now;
            else if (word is "msgid")
                key = now;
            else if (word is "msgid_plural")
                many = now;
            else if (word.StartsWith("msgstr"))
                texts.Add(now);
            else
                throw new FormatException($"Line {at}: \"{word}\" is no word of the format.");
        }

        public void Go(string text) => now.Append(text);

        public void End(List<PoEntry> entries)
        {
            // the entry for the empty key is the file's header
            if (key is { Length: > 0 } && Answered)
                entries.Add(
                    new(
                        context?.ToString(),
                        key.ToString(),
                        many?.ToString(),
                        [.. texts.Select(t => t.ToString())],
                        line
                    )
                );
        }
    }
}
