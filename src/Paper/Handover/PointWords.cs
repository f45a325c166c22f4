using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Photographs;

namespace Witnessmark.Paper.Handover;

/// <summary>What paper and log book say about one point, in short words.</summary>
public static class PointWords
{
    /// <summary>Whether something was to be measured here, so that it has a limit, a found and a left-at value.</summary>
    public static bool IsMeasured(this PointState state) =>
        state.Point.Reading.Kind
            is ReadingKind.Value
                or ReadingKind.Marks
                or ReadingKind.Sides
                or ReadingKind.Places
                or ReadingKind.Round
                or ReadingKind.Level
        && (state.Figure is not null || state.Readings.Any(r => r.Opinion.Limit is not null));

    /// <summary>Whether a fastener is tightened here.</summary>
    public static bool IsTightened(this PointState state) => state.Point.Reading.Kind is ReadingKind.Tighten;

    /// <summary>What is permitted or demanded: <c>13 – 32 mm</c>; a level is judged between its marks.</summary>
    public static Sentence Limit(PointState state) =>
        state.Point.Reading.Kind is ReadingKind.Level && state.Figure is { Min: 0, Max: 1 }
            ? (Sentence)$"between the marks"
        : state.Figure is { } figure ? figure.Short
        : (Sentence)$"no figure";

    /// <summary>Who demands it; a figure that binds nobody says so.</summary>
    public static Sentence Origin(PointState state) =>
        state is { Given: { } given, Figure: { } figure }
            ? (Sentence)$"{Of(figure.Origin)}; given at the bench by {given.Entry.By}"
            : Of(state.Figure?.Origin);

    /// <summary>What a photograph was taken of: the machine, a point, or where the point's figure stands.</summary>
    public static Sentence Of(Photograph photograph, JobState state)
    {
        var title = state.Points.FirstOrDefault(p => p.Point.Id == photograph.Point)?.Point.Title ?? photograph.Point;
        return photograph.Point.Length == 0 ? (Sentence)$"The machine"
            : photograph.Figure is not null ? (Sentence)$"{title}: where its figure stands"
            : Sentence.Of(title);
    }

    /// <summary>Who demands something.</summary>
    public static Sentence Of(Origin? origin) =>
        origin switch
        {
            null => Sentence.Empty,
            { Kind: OriginKind.Maker, Place: var place } => $"maker, {place}",
            { Kind: OriginKind.Law, Place: var place } => $"law, {place}",
            { Kind: OriginKind.Standard, Place: var place } => $"standard, {place}",
            { Kind: OriginKind.Shop } => $"the workshop's figure, not the maker's",
            _ => $"common practice, not the maker's figure",
        };

    /// <summary>The first reading of this visit.</summary>
    public static Sentence Found(PointState state) => state.Found is { } found ? Shown(found) : (Sentence)$"not read";

    /// <summary>The reading that counts when the machine leaves; a verdict that is not plainly inside stands with it.</summary>
    public static Sentence LeftAt(PointState state) =>
        state.Current is { } now ? Shown(now)
        : state.Readings.Count > 0 ? (Sentence)$"to be read again"
        : (Sentence)$"not read";

    /// <summary>The verdict where it is not plainly inside, else empty.</summary>
    public static Sentence Remark(PointState state)
    {
        if (state.Left is not null)
            return $"left as it is";
        return state.Current?.Opinion.Verdict switch
        {
            null => Sentence.Empty,
            VerdictWord.Outside => $"outside",
            VerdictWord.Unproven => $"unproven",
            VerdictWord.Close when state.Marked is null => $"close, not marked",
            VerdictWord.Close => $"close to its limit",
            _ when state.Marked is null => $"not marked",
            _ => Sentence.Empty,
        };
    }

    /// <summary>Corrections in order, and what the last reading was taken with.</summary>
    public static Sentence Done(PointState state) =>
        Sentence.List(state.Corrections.Select(c => c.Words).Concat(With(state.Readings.LastOrDefault())), "; ");

    private static IEnumerable<Sentence> With(ReadingTaken? reading) =>
        reading?.Instrument is { } instrument ? [$"read with {instrument.Name}"] : [];

    /// <summary>The same; something that was only done is said to be done.</summary>
    public static Sentence Said(ReadingTaken reading) => reading.Raw.Count > 0 ? Shown(reading) : (Sentence)$"done";

    /// <summary>A reading as people say it; as it was typed where no verdict put it into words.</summary>
    public static Sentence Shown(ReadingTaken reading) =>
        reading.Opinion.Shown is { Length: > 0 } shown ? shown : Sentence.List(reading.Raw.Select(Sentence.Number));
}
