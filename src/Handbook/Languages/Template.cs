using System.Globalization;
using System.Text;

namespace Witnessmark.Handbook.Languages;

/// <summary>A text with places for arguments, <c>{0} L added</c>; a brace of its own stands twice.</summary>
internal static class Template
{
    public static string Fill(string text, IReadOnlyList<Argument> arguments, Tongue tongue)
    {
        if (text.AsSpan().IndexOfAny('{', '}') < 0)
            return text;
        var filled = new StringBuilder(text.Length + 8 * arguments.Count);
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is not ('{' or '}'))
                filled.Append(text[at]);
            else if (at + 1 < text.Length && text[at + 1] == text[at])
                filled.Append(text[at++]);
            else
                filled.Append(arguments[Place(text, ref at)].In(tongue));
        }
        return filled.ToString();
    }

    /// <summary>The same with arguments that are in the language already.</summary>
    public static string Fill(string text, IReadOnlyList<string> said)
    {
        var filled = new StringBuilder();
        for (var at = 0; at < text.Length; at++)
            filled.Append(text[at] == '{' && text[at + 1] != '{' ? said[Place(text, ref at)] : Plain(text, ref at));
        return filled.ToString();
    }

    /// <summary>What stands before, between and after the places.</summary>
    public static string[] Literals(string text)
    {
        List<string> literals = [];
        var literal = new StringBuilder();
        for (var at = 0; at < text.Length; at++)
            if (text[at] == '{' && text[at + 1] != '{')
            {
                Place(text, ref at);
                literals.Add(literal.ToString());
                literal.Clear();
            }
            else
                literal.Append(Plain(text, ref at));
        return [.. literals, literal.ToString()];
    }

    // a brace of its own stands twice
    private static char Plain(string text, ref int at) => text[at] is '{' or '}' ? text[at++] : text[at];

    private static int Place(string text, ref int at)
    {
        var end = text.IndexOf('}', at);
        var place = int.Parse(text.AsSpan(at + 1, end - at - 1), NumberStyles.None, CultureInfo.InvariantCulture);
        at = end;
        return place;
    }
}
