using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>A point with the table it was read from, so that checks across files can say where.</summary>
internal sealed record PointRead(Point Point, TomlTable Table);

/// <summary>A purpose with the table it was read from.</summary>
internal sealed record PurposeRead(string Name, IReadOnlyList<PlannedPoint> Plan, TomlTable Table);

/// <summary>A state of the machine with the table it was read from.</summary>
internal sealed record ReachRead(ReachState Reach, TomlTable Table);

/// <summary>A figure key with the table it was read from.</summary>
internal sealed record FigureKeyRead(FigureKey Key, TomlTable Table);

/// <summary>Something of an earlier layer that a later one says otherwise.</summary>
/// <param name="What"><c>point "chain-slack"</c>.</param>
/// <param name="By">Where it now stands.</param>
/// <param name="Was">Where it stood before.</param>
public sealed record Overridden(string What, Place By, Place Was);

/// <summary>
/// Reads <c>book/REGION.toml</c>: points under <c>[points.NAME]</c>, plans under <c>[purposes.NAME]</c>, one line
/// <c>point = "why"</c> each, in bench order; states under <c>[reach.NAME]</c>, figures under <c>[figure-keys]</c>, common practice under <c>[common-practice]</c>. Files come
/// in layers: within one layer each name stands once, and a later layer overrides an earlier one name by name.
/// </summary>
internal sealed class BenchBookFile
{
    private readonly Layered<PointRead> points = new("point");
    private readonly Layered<PurposeRead> purposes = new("purpose");
    private readonly Layered<ReachRead> reach = new("reach");
    private readonly Layered<FigureKeyRead> figureKeys = new("figure key");
    private readonly Layered<CommonPracticeRead> commonPractice = new("common practice for");

    /// <summary>Points of all files read so far, by id.</summary>
    public IReadOnlyDictionary<string, PointRead> Points => points.All;

    /// <summary>Purposes of all files read so far, by name.</summary>
    public IReadOnlyDictionary<string, PurposeRead> Purposes => purposes.All;

    /// <summary>States of all files read so far, by name.</summary>
    public IReadOnlyDictionary<string, ReachRead> Reach => reach.All;

    /// <summary>Figure keys of all files read so far.</summary>
    public IReadOnlyDictionary<string, FigureKeyRead> FigureKeys => figureKeys.All;

    /// <summary>CommonPractice of all files read so far, by figure key.</summary>
    public IReadOnlyDictionary<string, CommonPracticeRead> CommonPractice => commonPractice.All;

    /// <summary>What a later layer says otherwise, in the order it was met.</summary>
    public IReadOnlyList<Overridden> Overridden =>
        [
            .. points.Overridden,
            .. purposes.Overridden,
            .. reach.Overridden,
            .. figureKeys.Overridden,
            .. commonPractice.Overridden,
        ];

    /// <summary>The book.</summary>
    public BenchBook Book =>
        new(
            points.All.ToDictionary(p => p.Key, p => p.Value.Point with { AgainAfter = AgainAfter(p.Value.Point) }),
            purposes.All.ToDictionary(p => p.Key, p => p.Value.Plan),
            reach.All.ToDictionary(r => r.Key, r => r.Value.Reach),
            figureKeys.All.ToDictionary(k => k.Key, k => k.Value.Key)
        )
        {
            CommonPractice = commonPractice
                .All.Where(p => p.Value.Habit is not null)
                .ToDictionary(p => p.Key, p => p.Value.Habit!),
        };

    /// <summary>Takes one file in.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layer">0 for the book itself, more for what overrides it; layers come in their order.</param>
    public void Take(TomlFile file, int layer)
    {
        var region = Path.GetFileNameWithoutExtension(file.Name);
        foreach (var (id, table) in file.Root.Tables("points"))
            points.Add(id, new(PointTable.Read(id, region, table), table), table, layer);
        foreach (var (name, table) in file.Root.Tables("purposes"))
        {
            var plan = table.Keys.ToArray().Select(point => new PlannedPoint(point, table.Text(point))).ToArray();
            purposes.Add(name, new(name, plan, table), table, layer);
        }
        foreach (var (name, table) in file.Root.Tables("reach"))
            reach.Add(name, new(ReachTable.Read(name, table), table), table, layer);
        foreach (var (key, table) in file.Root.Tables("figure-keys"))
            figureKeys.Add(key, new(FigureKeyTable.Read(key, table), table), table, layer);
        foreach (var (key, table) in file.Root.Tables("common-practice"))
            commonPractice.Add(key, CommonPracticeTable.Read(key, table), table, layer);
        file.Root.NoOtherKeys();
    }

    /// <summary>Its own and that of every point which asks for it again, each once.</summary>
    public IReadOnlyList<string> AgainAfter(Point point) =>
        [
            .. point
                .AgainAfter.Concat(
                    points.All.Values.Select(p => p.Point).Where(p => p.AsksAgain.Contains(point.Id)).Select(p => p.Id)
                )
                .Distinct(),
        ];
}
