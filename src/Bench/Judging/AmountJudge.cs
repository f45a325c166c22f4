using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>An amount put in: recorded, not judged; the level afterwards is.</summary>
internal static class AmountJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        var unit = judged.Point.Reading.Unit ?? UnitTable.Named("L");
        var sum = 0.0;
        foreach (var raw in judged.Raw)
        {
            if (RawValue.In(raw, unit, out var why) is not { } value)
                return (null, why);
            if (value < 0)
                return (null, $"\"{raw}\" is less than nothing. Allowed: zero or more.");
            sum += value;
        }
        var typed = string.Join(" + ", judged.Raw);
        var total = Numerals.With(sum, unit, 3);
        var said = Sentence.Number(typed);
        Sentence grounds = typed == total ? (Sentence)$"{total} put in." : (Sentence)$"{said} put in: {total}.";
        return (new(VerdictWord.Inside, sum, null, null, unit, null, said, $"Recorded", grounds, [], []), null);
    }
}
