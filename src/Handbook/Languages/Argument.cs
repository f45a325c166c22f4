using System.Globalization;

namespace Witnessmark.Handbook.Languages;

/// <summary>An argument of a sentence, with the form that the invariant culture writes it in.</summary>
internal readonly record struct Argument(object? Value, string? Format)
{
    /// <summary>In a language: sentences as sentences, numbers with its mark, texts as its catalogue has them.</summary>
    public string In(Tongue tongue) =>
        Value switch
        {
            null => "",
            Sentence sentence => sentence.In(tongue),
            string text => tongue.Word(text),
            sbyte or byte or short or ushort or int or uint or long or ulong or float or double or decimal =>
                tongue.Number(Invariant()),
            _ => Invariant(),
        };

    private string Invariant() =>
        Value is IFormattable formattable
            ? formattable.ToString(Format, CultureInfo.InvariantCulture)
            : Value?.ToString() ?? "";
}
