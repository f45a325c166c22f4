namespace Witnessmark.Bench.Day;

/// <summary>Minutes from one moment up to, and without, another; counted from the midnight that a question begins with.</summary>
public readonly record struct Span(int From, int To)
{
    /// <summary>How long.</summary>
    public int Length => To - From;

    /// <summary>Whether both have a minute in common.</summary>
    public bool Meets(Span other) => From < other.To && other.From < To;
}

/// <summary>Lists of spans in order, none touching another.</summary>
public static class Spans
{
    /// <summary>What both lists have.</summary>
    public static IReadOnlyList<Span> Common(IReadOnlyList<Span> one, IReadOnlyList<Span> other) =>
        [
            .. one.SelectMany(a =>
                other.Where(a.Meets).Select(b => new Span(Math.Max(a.From, b.From), Math.Min(a.To, b.To)))
            ),
        ];

    /// <summary>What is left of a list when some spans, in any order, are taken out.</summary>
    public static IReadOnlyList<Span> Without(IReadOnlyList<Span> from, IEnumerable<Span> taken)
    {
        IEnumerable<Span> left = from;
        foreach (var span in taken)
            left = left.SelectMany(s => Cut(s, span));
        return [.. left];
    }

    /// <summary>Minutes of a list that lie within a span.</summary>
    public static int Within(IReadOnlyList<Span> of, Span span) =>
        of.Where(span.Meets).Sum(s => Math.Min(s.To, span.To) - Math.Max(s.From, span.From));

    private static IEnumerable<Span> Cut(Span whole, Span taken)
    {
        if (!whole.Meets(taken))
        {
            yield return whole;
            yield break;
        }
        if (whole.From < taken.From)
            yield return whole with
            {
                To = taken.From,
            };
        if (taken.To < whole.To)
            yield return whole with
            {
                From = taken.To,
            };
    }
}
