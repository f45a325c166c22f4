namespace Witnessmark.Handbook.Languages;

/// <summary>
/// A text inside a sentence that no language says in another way, though a catalogue may have the same word: the key of a file, what somebody typed.
/// </summary>
/// <param name="Text">The text.</param>
public sealed record AsItStands(string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
