using Tomlyn.Syntax;

namespace Witnessmark.Bench.Toml;

/// <summary>Builds our tree from Tomlyn's syntax tree and notices every key that is written twice.</summary>
internal sealed class TreeBuilder(string file, Mistakes mistakes)
{
    private readonly HashSet<TomlTable> opened = [];
    private readonly HashSet<TomlTable> closed = [];
    private readonly Dictionary<TomlTable, Dictionary<string, List<TomlValue>>> lists = [];

    public TomlTable Build(DocumentSyntax document)
    {
        var root = new TomlTable(new(file, 1, 1), mistakes);
        Fill(root, document.KeyValues);
        foreach (var table in document.Tables)
            if (Opened(root, table) is { } at)
                Fill(at, table.Items);
        return root;
    }

    private TomlTable? Opened(TomlTable root, TableSyntaxBase header)
    {
        var path = Path(header.Name!);
        if (Walk(root, path) is not { } parent)
            return null;
        var (name, place) = path[^1];
        return header is TableArraySyntax ? OneMore(parent, name, place) : Single(parent, name, place);
    }

    private TomlTable? Single(TomlTable parent, string name, Place place)
    {
        var table = Step(parent, name, place);
        if (table is null || opened.Add(table))
            return table;
        Doubled(place, name, table.Place);
        return null;
    }

    private TomlTable? OneMore(TomlTable parent, string name, Place place)
    {
        if (!lists.TryGetValue(parent, out var here))
            lists[parent] = here = new(StringComparer.Ordinal);
        if (!here.TryGetValue(name, out var items))
        {
            here[name] = items = [];
            if (!Put(parent, name, place, new TomlList(place, items)))
                return null;
        }
        var table = new TomlTable(place, mistakes);
        items.Add(table);
        return table;
    }

    private void Fill(TomlTable table, IEnumerable<KeyValueSyntax> lines)
    {
        foreach (var line in lines)
        {
            var path = Path(line.Key!);
            if (Walk(table, path) is { } at)
                Put(at, path[^1].Name, path[^1].Place, Value(line.Value!));
        }
    }

    private TomlTable? Walk(TomlTable from, List<(string Name, Place Place)> path)
    {
        TomlTable? at = from;
        for (var i = 0; i < path.Count - 1 && at is not null; i++)
            at = Step(at, path[i].Name, path[i].Place);
        return at;
    }

    /// <summary>The table of that name, made when it is new; of a list of tables the latest; null when a value stands there.</summary>
    private TomlTable? Step(TomlTable from, string name, Place place)
    {
        switch (from.Entries.GetValueOrDefault(name)?.Value)
        {
            case TomlTable table when !closed.Contains(table):
                return table;
            case TomlList { Items: [.., TomlTable last] } when lists.GetValueOrDefault(from)?.ContainsKey(name) == true:
                return last;
            case null:
                var made = new TomlTable(place, mistakes);
                Put(from, name, place, made);
                return made;
            case var value:
                Doubled(place, name, value.Place);
                return null;
        }
    }

    private bool Put(TomlTable table, string name, Place place, TomlValue value)
    {
        if (table.Entries.TryAdd(name, new(place, value)))
            return true;
        Doubled(place, name, table.Entries[name].Key);
        return false;
    }

    private void Doubled(Place place, string name, Place first) =>
        mistakes.Add(place, $"\"{name}\" a second time", $"each name once (it stands already in line {first.Line})");

    private TomlValue Value(ValueSyntax value) =>
        value switch
        {
            StringValueSyntax text => new TomlText(At(value), text.Value ?? ""),
            IntegerValueSyntax whole => new TomlWhole(At(value), whole.Value),
            FloatValueSyntax fraction => new TomlFraction(At(value), fraction.Value)
            {
                Written = fraction.Token?.Text ?? "",
            },
            BooleanValueSyntax truth => new TomlTruth(At(value), truth.Value),
            DateTimeValueSyntax date => new TomlDate(At(value), date.Token?.Text ?? ""),
            ArraySyntax list => new TomlList(At(value), [.. list.Items.Select(i => Value(i.Value!))]),
            InlineTableSyntax inline => Inline(inline),
            _ => throw new NotSupportedException($"TOML value {value.Kind}"),
        };

    private TomlTable Inline(InlineTableSyntax inline)
    {
        var table = new TomlTable(At(inline), mistakes);
        Fill(table, inline.Items.Select(i => i.KeyValue!));
        closed.Add(table); // TOML: an inline table is whole, nothing is added to it elsewhere
        return table;
    }

    private List<(string Name, Place Place)> Path(KeySyntax key)
    {
        List<(string, Place)> path = [(Name(key.Key!), At(key.Key!))];
        foreach (var dotted in key.DotKeys)
            path.Add((Name(dotted.Key!), At(dotted.Key!)));
        return path;
    }

    private static string Name(BareKeyOrStringValueSyntax key) =>
        key is StringValueSyntax text ? text.Value ?? "" : ((BareKeySyntax)key).Key?.Text ?? "";

    private Place At(SyntaxNode node) => new(file, node.Span.Start.Line + 1, node.Span.Start.Column + 1);
}
