using System.Globalization;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Bench.Judging;

/// <summary>How old the tyres are by their date codes.</summary>
internal static class TyreDateJudge
{
    public static (Opinion?, string?) Of(ReadingToJudge judged)
    {
        if (judged.On is not { } on)
            return (null, "The device's clock is unreadable: the age cannot be told.");
        if (judged.Raw.FirstOrDefault(c => !TyreDate.IsCode(c)) is { } wrong)
            return (
                null,
                $"\"{wrong}\" is no date code. Allowed: four digits, week and year, e.g. \"3123\" (three on tyres made before 2000)."
            );
        var ages = judged.Raw.Select(code => TyreDate.Read(code, on)).ToArray();
        if (ages.FirstOrDefault(a => !a.Holds).Refusal is { } refusal)
            return (
                Judge.Plain(VerdictWord.Unproven, string.Join(", ", judged.Raw), "Age unknown", refusal.Because),
                null
            );
        var weeks = judged.Raw.Select((code, i) => Made(judged, i, ages[i].Certain));
        var oldest = ages.Max(a => a.Certain.Age.Seconds) / UnitTable.Named("day").Factor;
        var made = string.Join("; ", weeks);
        var tooOld =
            judged.Figure?.Max is { } most && oldest > judged.Figure.Unit.ToBase(most) / UnitTable.Named("day").Factor;
        var grounds = $"Made {made}; the oldest is {Years(oldest)} old.";
        if (judged.Figure is { } figure)
            grounds = $"{grounds[..^1]}; {Allowed.By(figure)}.";
        if (ages.Select(a => a.Certain.Note).OfType<string>().FirstOrDefault() is { } note)
            return (
                Judge.Plain(tooOld ? VerdictWord.Outside : VerdictWord.Unproven, made, NotACode, $"{grounds} {note}"),
                null
            );
        return (
            Judge.Plain(
                tooOld ? VerdictWord.Outside : VerdictWord.Inside,
                made,
                tooOld ? "Older than allowed" : $"{Years(oldest)} old",
                grounds
            ),
            null
        );
    }

    private const string NotACode = "No tyre carries this code: read it again";

    private static string Made(ReadingToJudge judged, int i, TyreAge age)
    {
        var place = i < judged.Places.Count ? judged.Places[i] + " " : "";
        return $"{place}in the week from {age.WeekStarts.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}";
    }

    private static string Years(double days) => $"{Numerals.Plain(days / 365.25, 1)} years";
}
