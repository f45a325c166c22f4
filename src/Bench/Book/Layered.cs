using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>Named things out of several layers of files; the latest layer that has a name says what it is.</summary>
internal sealed class Layered<T>(string what)
{
    private readonly OrderedDictionary<string, T> all = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (TomlTable Table, int Layer)> from = new(StringComparer.Ordinal);
    private readonly List<Overridden> overridden = [];

    /// <summary>By name, in the order they were first met.</summary>
    public IReadOnlyDictionary<string, T> All => all;

    public IReadOnlyList<Overridden> Overridden => overridden;

    /// <summary>Adds a thing; the same name twice in one layer is a mistake.</summary>
    public void Add(string name, T thing, TomlTable table, int layer)
    {
        if (from.TryGetValue(name, out var first) && first.Layer == layer)
        {
            table.Mistakes.Add(
                table.Place,
                $"{what} \"{name}\" a second time",
                $"each name once (it stands already in {first.Table.Place.File}, line {first.Table.Place.Line})"
            );
            return;
        }
        if (first.Table is not null)
            overridden.Add(new($"{what} \"{name}\"", table.Place, first.Table.Place));
        all[name] = thing;
        from[name] = (table, layer);
    }
}
