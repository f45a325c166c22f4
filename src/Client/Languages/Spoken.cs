using Witnessmark.Bench.Day;

namespace Witnessmark.Client.Languages;

/// <summary>
/// The one place that knows the language of whoever works here: one person at a time has this program open in a browser. Everything that is
/// pure takes a language as an argument.
/// </summary>
internal static class Spoken
{
    public static Tongue OwnTongue { get; set; } = Tongue.English;

    /// <summary>A sentence in the person's language.</summary>
    public static string Say(Sentence? sentence) => sentence?.In(OwnTongue) ?? "";

    /// <summary>A sentence of the bench in the person's language.</summary>
    public static string Known(Sentence? sentence) => sentence?.In(OwnTongue) ?? "";

    /// <summary>A text from the bench book, a file or a person: in the language where the catalogue has it, else as it is.</summary>
    public static string Known(string? text) => text is null ? "" : OwnTongue.Word(text);

    /// <summary>A number that is stored as English writes it, as the person writes it.</summary>
    public static string Digits(string number) => OwnTongue.Number(number);

    /// <summary>A number as the person typed it, as it is stored.</summary>
    public static string Stored(string? typed) => typed is null ? "" : OwnTongue.Stored(typed);

    /// <summary>A day in figures.</summary>
    public static string Day(DateOnly? day) => day is { } known ? Say(Sentence.Day(DayForm.Figures, known)) : "";

    /// <summary>A moment in figures, by the clock of the workshop.</summary>
    public static string Moment(DateTime at) =>
        OwnTongue.Code == "en"
            ? ShopTime.Write(at)
            : $"{Day(DateOnly.FromDateTime(at))} {at.ToString("HH':'mm", CultureInfo.InvariantCulture)}";

    /// <summary>The moment of an entry, which is stored as text: in German its day and minute, else as it stands.</summary>
    public static string Moment(string? at) =>
        at is { Length: > 16 } && OwnTongue.Code != "en" && DateOnly.TryParseExact(at[..10], "yyyy-MM-dd", out var day)
            ? $"{Day(day)} {at[11..16]}"
            : at ?? "";

    /// <summary>A label inside a sentence: English begins it small there, German leaves it.</summary>
    public static string Inside(string label) => OwnTongue.Inside(label);
}
