using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Times;

/// <summary>How long points took, from what a device wrote down and when.</summary>
/// <remarks>
/// <para><b>Formula.</b> An entry says when something was done, none says when it was begun. A technician does one thing after another,
/// so the time since the entry before it on the same device, in the same job and by the same person belongs to its point; a point takes
/// the sum of these up to its first mark. Where the point before it in that row has to wait and comes first by the book (<c>after</c>), the time
/// is that wait and the hands together: what exceeds the hands' planned time is seen as the wait, and nothing as hands.</para>
/// <para><b>Units.</b> Time by the device's clock, which is recorded and not trusted.</para>
/// <para><b>Source.</b> Own derivation, no source.</para>
/// <para><b>Valid when</b> entries are made as the work goes. No beginning: the first entry of a device in a job. No time at all: a clock that
/// stood still or went back, more than <see cref="LongestGap"/> between two entries, another person in between. A point with such a piece in
/// its sum is left out whole: a part is not the whole, and nothing is not zero.</para>
/// </remarks>
public static class ObservedTimes
{
    /// <summary>After a longer pause the work was laid down. Common practice, no source.</summary>
    public static readonly TimeSpan LongestGap = TimeSpan.FromHours(4);

    /// <summary>Every time that the entries of any number of jobs tell.</summary>
    public static IReadOnlyList<ObservedTime> Of(IEnumerable<Entry> entries, BenchBook book) =>
        [
            .. entries
                .GroupBy(e => (e.Job, e.Chain))
                .SelectMany(row => OfRow([.. row.DistinctBy(e => e.Seq).OrderBy(e => e.Seq)], book)),
        ];

    private static IEnumerable<ObservedTime> OfRow(IReadOnlyList<Entry> row, BenchBook book)
    {
        Dictionary<string, TimeSpan?> soFar = [];
        HashSet<string> marked = [];
        string? before = null;
        for (var i = 1; i < row.Count; i++)
        {
            before = PointOf(row[i - 1]) ?? before;
            if (PointOf(row[i]) is not { } id || marked.Contains(id) || !book.Points.TryGetValue(id, out var point))
                continue;
            var gap = Gap(row[i - 1], row[i]);
            if (before is not null && Waits(before, point, book))
            {
                if (gap - point.Hands is { } wait && wait > TimeSpan.Zero)
                    yield return new(before, null, wait);
                gap = null;
            }
            soFar[id] = soFar.TryGetValue(id, out var sum) ? sum + gap : gap;
            if (row[i].Kind != EntryKind.Mark)
                continue;
            marked.Add(id);
            if (soFar[id] is { } took && took > TimeSpan.Zero)
                yield return new(id, row[i].By, took);
        }
    }

    /// <summary>Whether the time between two points is a wait that the book knows of.</summary>
    private static bool Waits(string before, Point point, BenchBook book) =>
        before != point.Id
        && point.After.Contains(before)
        && book.Points.TryGetValue(before, out var waited)
        && waited.Waits > TimeSpan.Zero;

    private static TimeSpan? Gap(Entry from, Entry to) =>
        from.By == to.By && At(from) is { } begun && At(to) is { } done && done >= begun && done - begun <= LongestGap
            ? done - begun
            : null;

    private static DateTimeOffset? At(Entry entry) =>
        DateTimeOffset.TryParse(entry.At, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? at
            : null;

    private static string? PointOf(Entry entry) =>
        entry.Body.ValueKind == JsonValueKind.Object
        && entry.Body.TryGetProperty("point", out var point)
        && point.ValueKind == JsonValueKind.String
            ? point.GetString()
            : null;
}
