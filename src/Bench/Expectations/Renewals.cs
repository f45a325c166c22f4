using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Expectations;

/// <summary>What the record of a job says was put in new. Nothing is guessed: somebody wrote it down, or the part reads better beyond doubt.</summary>
internal static class Renewals
{
    /// <summary>Against its wear by more than so many standard deviations of the two readings, it was renewed. Common practice, no source.</summary>
    private const double Surely = 3;

    // as people write it, in the languages that the program speaks
    private static readonly string[] Renewed =
    [
        "new",
        "renewed",
        "replaced",
        "neu",
        "neue",
        "neuer",
        "neues",
        "neuen",
        "erneuert",
        "ersetzt",
        "getauscht",
        "ausgetauscht",
    ];

    /// <summary>How the record says it, in a few words; null when it does not.</summary>
    public static Sentence? Of(PointState point) =>
        point.Corrections.Select(c => c.Words).FirstOrDefault(Says) is { } said ? (Sentence)$"“{said}”"
        : point.Found is { } found && point.Current is { } now && Better(found, now, point.Figure)
            ? (Sentence)$"read {found.Opinion.Shown}, then {now.Opinion.Shown}"
        : null;

    /// <summary>Whether the words of a correction call something new.</summary>
    public static bool Says(Sentence correction) => Words(correction.ToString()).Any(Renewed.Contains);

    /// <summary>The words of a sentence, in small letters.</summary>
    public static string[] Words(string sentence) =>
        sentence
            .ToLowerInvariant()
            .Split([' ', ',', '.', ';', ':', '-', '(', ')', '/', '"', '“', '”'], StringSplitOptions.RemoveEmptyEntries);

    private static bool Better(ReadingTaken found, ReadingTaken now, Figure? figure)
    {
        if (
            (found.Opinion.Value, now.Opinion.Value) is not ({ } was, { } isNow)
            || found.Opinion.Unit != now.Opinion.Unit
            || (found.Opinion.StandardUncertainty, now.Opinion.StandardUncertainty) is not ({ } before, { } after)
        )
            return false;
        var better = figure?.Kind switch
        {
            FigureKind.Min => isNow - was,
            FigureKind.Max => was - isNow,
            _ => 0,
        };
        return better > Surely * Math.Sqrt(before * before + after * after);
    }
}
