using System.Text;

namespace Witnessmark.Bench.Toml;

/// <summary>Text as a basic string of TOML 1.0: quotes, backslashes and control characters escaped.</summary>
internal static class TomlQuote
{
    public static string Of(string text)
    {
        var quoted = new StringBuilder(text.Length + 2).Append('"');
        foreach (var character in text)
            quoted.Append(
                character switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    '\n' => "\\n",
                    '\t' => "\\t",
                    < ' ' or '\x7f' => $"\\u{(int)character:x4}",
                    _ => character,
                }
            );
        return quoted.Append('"').ToString();
    }
}
