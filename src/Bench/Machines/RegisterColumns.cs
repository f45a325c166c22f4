using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Machines;

/// <summary>Which column of a shop's list says what, and how days are written in it.</summary>
/// <param name="Places">For each key that is taken the column, from 0.</param>
/// <param name="Days">Form of days.</param>
/// <param name="Width">Columns of the list.</param>
/// <param name="NotTaken">Columns that nothing is taken from.</param>
public sealed record RegisterColumns(
    IReadOnlyDictionary<string, int> Places,
    string Days,
    int Width,
    IReadOnlyList<string> NotTaken
)
{
    internal const string IsoDays = "yyyy-MM-dd";
    private static readonly string[] DayForms = [IsoDays, "dd.MM.yyyy", "dd/MM/yyyy", "MM/dd/yyyy"];

    /// <summary>What a column can say. The unit of a distance stands in its name.</summary>
    public static readonly IReadOnlyList<string> Keys =
    [
        "id",
        "vin",
        "frame",
        "plate",
        "make",
        "name",
        "year",
        "sheet",
        "distance-km",
        "distance-mi",
        "distance-on",
        "owner",
        "contact",
    ];

    /// <summary>Columns that are called as the keys are.</summary>
    public static (RegisterColumns? Columns, IReadOnlyList<Mistake> Mistakes) ByName(IReadOnlyList<string> head) =>
        Of([.. Keys.Where(head.Contains).Select(k => new Named(k, k, new("list", 1, 1)))], IsoDays, head, []);

    /// <summary>Reads <c>vin=Frame,plate=Registration</c>; <c>days=dd.MM.yyyy</c> says how days are written.</summary>
    public static (RegisterColumns? Columns, IReadOnlyList<Mistake> Mistakes) Read(
        string map,
        IReadOnlyList<string> head
    )
    {
        var mistakes = new Mistakes();
        List<Named> named = [];
        var days = IsoDays;
        var column = 1;
        foreach (var part in map.Split(','))
        {
            var place = new Place("--map", 1, column);
            column += part.Length + 1;
            if (part.IndexOf('=') is var at && at <= 0)
                mistakes.Add(place, $"\"{part}\"", "KEY=COLUMN");
            else if (part[..at].Trim() == "days")
                days = Form(part[(at + 1)..].Trim(), place, mistakes);
            else
                named.Add(new(part[..at].Trim(), part[(at + 1)..].Trim(), place));
        }
        return Of(named, days, head, mistakes);
    }

    /// <summary>Reads a mapping file: a table <c>[columns]</c> and, if need be, <c>days = "dd.MM.yyyy"</c>.</summary>
    public static (RegisterColumns? Columns, IReadOnlyList<Mistake> Mistakes) Read(
        SourceText source,
        IReadOnlyList<string> head
    )
    {
        var mistakes = new Mistakes();
        var root = TomlFile.Read(source, mistakes).Root;
        if (mistakes.Count > 0)
            return (null, mistakes.Sorted());
        var days = root.TextOrNothing("days") is { } form ? Form(form, root.At("days"), mistakes) : IsoDays;
        var table = root.Table("columns");
        var named = table.Keys.Select(k => new Named(k, table.Text(k), table.KeyAt(k))).ToArray();
        root.NoOtherKeys();
        return Of(named, days, head, mistakes);
    }

    private static string Form(string written, Place place, Mistakes mistakes)
    {
        if (!DayForms.Contains(written))
            mistakes.Add(place, $"days are written \"{written}\"", "one of " + string.Join(", ", DayForms));
        return written;
    }

    private static (RegisterColumns?, IReadOnlyList<Mistake>) Of(
        IReadOnlyList<Named> named,
        string days,
        IReadOnlyList<string> head,
        Mistakes mistakes
    )
    {
        Dictionary<string, int> places = new(StringComparer.Ordinal);
        foreach (var (key, column, place) in named)
        {
            if (!Keys.Contains(key))
                mistakes.Add(place, $"unknown key \"{key}\"", Nearest.InWords(key, [.. Keys, "days"]));
            var count = head.Count(h => h == column);
            if (count == 0)
                mistakes.Add(place, $"the list has no column \"{column}\"", Nearest.InWords(column, [.. head]));
            if (count > 1)
                mistakes.Add(place, $"the list has {count} columns \"{column}\"", "a name of its own for each");
            if (!places.TryAdd(key, Math.Max(0, head.ToList().IndexOf(column))))
                mistakes.Add(place, $"\"{key}\" a second time", "each key once");
        }
        Complete(places, named.Count > 0 ? named[0].Place : new("list", 1, 1), mistakes);
        return mistakes.Count > 0
            ? (null, mistakes.Sorted())
            : (new(places, days, head.Count, [.. head.Where((_, i) => !places.ContainsValue(i))]), []);
    }

    private static void Complete(Dictionary<string, int> places, Place at, Mistakes mistakes)
    {
        bool Has(string key) => places.ContainsKey(key);
        if (!Has("name"))
            mistakes.Add(at, "no column says the name of the model", "name=COLUMN");
        if (!Has("id") && !Has("vin") && !Has("frame"))
            mistakes.Add(at, "no column tells the machines apart", "id=COLUMN, vin=COLUMN or frame=COLUMN");
        if (Has("distance-km") && Has("distance-mi"))
            mistakes.Add(at, "distances in km and in mi", "one of the two");
        if ((Has("distance-km") || Has("distance-mi")) != Has("distance-on"))
            mistakes.Add(at, "a distance needs its day", "distance-km=COLUMN (or distance-mi) and distance-on=COLUMN");
        if (Has("contact") && !Has("owner"))
            mistakes.Add(at, "a contact without its owner", "owner=COLUMN beside it");
    }

    private sealed record Named(string Key, string Column, Place Place);
}
