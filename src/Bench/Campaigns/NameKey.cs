namespace Witnessmark.Bench.Campaigns;

/// <summary>
/// When two spellings of a make or a model are the same name: letters and digits count, in either case; spaces, dots,
/// dashes, plus signs and all the rest do not. <c>Fell-640 R</c> and <c>FELL 640R</c> are one name; <c>Fell 640</c> is another.
/// </summary>
/// <remarks>Letters with marks stay what they are: <c>Ö</c> is not <c>O</c>.</remarks>
public static class NameKey
{
    /// <summary>Letters and digits in capitals; empty when there is none.</summary>
    public static string Of(string name) =>
        string.Create(
            name.Count(char.IsLetterOrDigit),
            name,
            static (key, from) =>
            {
                var next = 0;
                foreach (var sign in from)
                    if (char.IsLetterOrDigit(sign))
                        key[next++] = char.ToUpperInvariant(sign);
            }
        );
}
