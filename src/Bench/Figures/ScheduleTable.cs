using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>One line of the service schedule.</summary>
/// <param name="Point">The point that is done.</param>
/// <param name="Every">As it stands in the sheet: <c>10000 km or 12 months</c>.</param>
/// <param name="Origin">Who asks for it.</param>
/// <param name="Rule">The same for the calculation that counts it.</param>
public sealed record ScheduledWork(string Point, string Every, Origin Origin, ServiceRule Rule)
{
    /// <summary><see cref="Every"/> in whatever language and units it is read.</summary>
    public Sentence Often => ScheduleWords.Of(Every);
}

/// <summary>Reads the tables <c>[[schedule]]</c>: point, every, first, origin.</summary>
internal static class ScheduleTable
{
    private const string Right = "a distance or months, or both: \"10000 km or 12 months\"";

    public static IReadOnlyList<ScheduledWork> Read(
        IEnumerable<TomlTable> tables,
        IReadOnlyCollection<string> documents
    )
    {
        List<ScheduledWork> all = [];
        foreach (var table in tables)
        {
            var work = Line(table, documents);
            if (all.Any(w => w.Point == work.Point && work.Point.Length > 0))
                table.Wrong(
                    "point",
                    $"\"{work.Point}\" a second time",
                    "each point once, with its distance and its months together"
                );
            all.Add(work);
        }
        return all;
    }

    private static ScheduledWork Line(TomlTable table, IReadOnlyCollection<string> documents)
    {
        var point = table.Text("point");
        var every = table.Text("every");
        var origin = OriginText.Read(table, documents);
        var (distance, months) = Intervals(table, every);
        var first = table.QuantityOrNothing("first", Dimension.Length);
        if (first is { Value: <= 0 })
            table.Wrong("first", $"\"{first}\"", "a distance above zero, e.g. \"1000 km\"");
        table.NoOtherKeys();
        return new(
            point,
            every,
            origin,
            new(point, distance, months, first is { Value: > 0 } at ? new Length(at.Base) : null)
        );
    }

    private static (Length? Distance, int? Months) Intervals(TomlTable table, string every)
    {
        (Length? Distance, int? Months) read = default;
        foreach (var part in every.Split(" or ", StringSplitOptions.TrimEntries).Where(_ => every.Length > 0))
            switch (Interval(part))
            {
                case { Unit.Dimension: Dimension.Length } distance when read.Distance is null:
                    read.Distance = new Length(distance.Base);
                    break;
                case { Unit.Dimension: Dimension.CalendarMonths } months when read.Months is null:
                    read.Months = Whole(table, part, months.Value);
                    break;
                case null:
                    table.Wrong("every", $"\"{part}\"", Right);
                    break;
                default:
                    table.Wrong("every", $"\"{part}\" beside another of its kind", Right);
                    break;
            }
        return read;
    }

    private static Written? Interval(string part) =>
        Written.Read(part, out var written) is null
        && written is { Value: > 0, Unit.Dimension: Dimension.Length or Dimension.CalendarMonths }
            ? written
            : null;

    private static int? Whole(TomlTable table, string part, double months)
    {
        if (months == Math.Floor(months) && months <= ServiceRule.MostMonths)
            return (int)months;
        table.Wrong("every", $"\"{part}\"", $"whole months, at most {ServiceRule.MostMonths}");
        return null;
    }
}
