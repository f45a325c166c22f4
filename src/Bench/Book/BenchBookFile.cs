using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>A point with the table it was read from, so that checks across files can say where.</summary>
internal sealed record PointRead(Point Point, TomlTable Table);

/// <summary>A purpose with the table it was read from.</summary>
internal sealed record PurposeRead(string Name, IReadOnlyList<PlannedPoint> Plan, TomlTable Table);

/// <summary>
/// Reads <c>book/REGION.toml</c>: points under <c>[points.NAME]</c>, plans under <c>[purposes.NAME]</c>, one line
/// <c>point = "why"</c> each, in bench order.
/// </summary>
internal sealed class BenchBookFile
{
    private readonly Dictionary<string, PointRead> points = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PurposeRead> purposes = new(StringComparer.Ordinal);

    /// <summary>Points of all files read so far, by id.</summary>
    public IReadOnlyDictionary<string, PointRead> Points => points;

    /// <summary>Purposes of all files read so far, by name.</summary>
    public IReadOnlyDictionary<string, PurposeRead> Purposes => purposes;

    /// <summary>The book.</summary>
    public BenchBook Book =>
        new(points.ToDictionary(p => p.Key, p => p.Value.Point), purposes.ToDictionary(p => p.Key, p => p.Value.Plan));

    /// <summary>Takes one file in.</summary>
    public void Take(TomlFile file)
    {
        var region = Path.GetFileNameWithoutExtension(file.Name);
        foreach (var (id, table) in file.Root.Tables("points"))
        {
            var read = new PointRead(PointTable.Read(id, region, table), table);
            if (!points.TryAdd(id, read))
                Doubled(table, $"point \"{id}\"", points[id].Table);
        }
        foreach (var (name, table) in file.Root.Tables("purposes"))
        {
            var plan = table.Keys.ToArray().Select(point => new PlannedPoint(point, table.Text(point))).ToArray();
            if (!purposes.TryAdd(name, new(name, plan, table)))
                Doubled(table, $"purpose \"{name}\"", purposes[name].Table);
        }
        file.Root.NoOtherKeys();
    }

    private static void Doubled(TomlTable table, string what, TomlTable first) =>
        table.Mistakes.Add(
            table.Place,
            $"{what} a second time",
            $"each name once (it stands already in {first.Place.File}, line {first.Place.Line})"
        );
}
