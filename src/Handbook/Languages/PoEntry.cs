namespace Witnessmark.Handbook.Languages;

/// <summary>An entry of a catalogue in the gettext PO format.</summary>
/// <param name="Context">What is meant (<c>msgctxt</c>), or null.</param>
/// <param name="Key">The English text (<c>msgid</c>).</param>
/// <param name="Many">The English text for many (<c>msgid_plural</c>), or null.</param>
/// <param name="Texts">The texts (<c>msgstr</c>): one, or one for each plural form.</param>
/// <param name="Line">Where it stands in its file, from 1.</param>
public sealed record PoEntry(string? Context, string Key, string? Many, IReadOnlyList<string> Texts, int Line);
