using Witnessmark.Bench.Campaigns;
using Witnessmark.Handbook.Identity;

namespace Witnessmark.Bench.Judging;

/// <summary>Whether the number on the frame is one, and this machine's.</summary>
internal static class VinJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        if (judged.Raw.Count != 1)
            return (null, $"One number is read here.");
        var typed = judged.Raw[0].Trim().ToUpperInvariant();
        return (
            judged.Machine is { Vin: "", Frame: { } frame } ? OfFrame(typed, frame) : OfVin(typed, judged.Machine.Vin),
            null
        );
    }

    private static Opinion OfVin(string typed, string known)
    {
        if (Vin.Read(typed) is not { } vin)
            return Judge.Plain(
                VerdictWord.Outside,
                Sentence.Of(typed),
                $"Not a vehicle identification number",
                $"It has 17 characters: digits and capital letters, never I, O or Q. Read the frame again."
            );
        Sentence? years =
            vin.ModelYears.Count == 0 ? null : (Sentence)$"Model year by the number: {Years(vin.ModelYears)}.";
        if (known.Length == 0)
            return Judge.Plain(
                VerdictWord.Inside,
                Sentence.Of(typed),
                $"Taken down: no number is on record",
                Sentence.Line($"There is nothing here to compare it with: hold it against the papers.", years, vin.Note)
            );
        return typed == known
            ? Judge.Plain(
                VerdictWord.Inside,
                Sentence.Of(typed),
                $"This machine's number",
                Sentence.Line($"As on record.", years, vin.Note)
            )
            : Another(typed, known);
    }

    /// <summary>A number of a time without VINs has no form of its own; blanks and dashes are no matter.</summary>
    private static Opinion OfFrame(string typed, string known) =>
        NameKey.Of(typed) == NameKey.Of(known)
            ? Judge.Plain(
                VerdictWord.Inside,
                Sentence.Of(typed),
                $"This machine's number",
                $"As on record: a frame number, no VIN."
            )
            : Another(typed, known);

    private static Sentence Years(IReadOnlyList<int> years) =>
        years is [var one, var other]
            ? (Sentence)$"{one} or {other}"
            : Sentence.List(years.Select(y => (Sentence)$"{y}"));

    private static Opinion Another(string typed, string known) =>
        Judge.Plain(
            VerdictWord.Outside,
            Sentence.Of(typed),
            $"Another machine's number",
            $"This job is for {known}. Read the frame again, or stop: this may be the wrong machine."
        );
}
