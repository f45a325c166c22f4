using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Bench.Judging;

/// <summary>How old the tyres are by their date codes.</summary>
internal static class TyreDateJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        if (judged.On is not { } on)
            return (null, $"The device's clock is unreadable: the age cannot be told.");
        if (judged.Raw.FirstOrDefault(c => !TyreDate.IsCode(c)) is { } wrong)
            return (
                null,
                $"\"{wrong}\" is no date code. Allowed: four digits, week and year, e.g. \"3123\" (three on tyres made before 2000)."
            );
        var ages = judged.Raw.Select(code => TyreDate.Read(code, on)).ToArray();
        if (ages.FirstOrDefault(a => !a.Holds).Refusal is { } refusal)
            return (
                Judge.Plain(VerdictWord.Unproven, Sentence.List(judged.Raw), $"Age unknown", refusal.Because),
                null
            );
        var weeks = judged.Raw.Select((code, i) => Made(judged, i, ages[i].Certain));
        var oldest = ages.Max(a => a.Certain.Age.Seconds) / UnitTable.Named("day").Factor;
        var made = Sentence.List(weeks, "; ");
        var tooOld =
            judged.Figure?.Max is { } most && oldest > judged.Figure.Unit.ToBase(most) / UnitTable.Named("day").Factor;
        Sentence grounds = judged.Figure is { } figure
            ? (Sentence)$"Made {made}; the oldest is {Years(oldest)} old; {Allowed.By(figure)}."
            : (Sentence)$"Made {made}; the oldest is {Years(oldest)} old.";
        if (ages.Select(a => a.Certain.Note).OfType<Sentence>().FirstOrDefault() is { } note)
            return (
                Judge.Plain(tooOld ? VerdictWord.Outside : VerdictWord.Unproven, made, NotACode, $"{grounds} {note}"),
                null
            );
        return (
            Judge.Plain(
                tooOld ? VerdictWord.Outside : VerdictWord.Inside,
                made,
                tooOld ? (Sentence)$"Older than allowed" : (Sentence)$"{Years(oldest)} old",
                grounds
            ),
            null
        );
    }

    private static Sentence NotACode => $"No tyre carries this code: read it again";

    private static Sentence Made(ReadingToJudge judged, int i, TyreAge age)
    {
        var week = Sentence.Day(DayForm.Words, age.WeekStarts);
        return i < judged.Places.Count
            ? (Sentence)$"{judged.Places[i]} in the week from {week}"
            : (Sentence)$"in the week from {week}";
    }

    private static Sentence Years(double days) => $"{Numerals.Plain(days / 365.25, 1)} years";
}
