using Witnessmark.Bench.Book;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.SecondChecks;

/// <summary>Which points a second person reads again in this shop, without seeing what the first one read.</summary>
/// <param name="Points">Ids of points.</param>
/// <param name="Groups">Regions of the bench book, all whose safety points are meant.</param>
public sealed record SecondCheckRule(IReadOnlyList<string> Points, IReadOnlyList<string> Groups)
{
    /// <summary>The shop asks for none.</summary>
    public static SecondCheckRule None { get; } = new([], []);

    /// <summary>The ids of all points that are meant, in the order of the book.</summary>
    public IReadOnlyList<string> In(BenchBook book) =>
        [
            .. book
                .Points.Values.Where(p => Points.Contains(p.Id) || (p.Safety && Groups.Contains(p.Region)))
                .Select(p => p.Id),
        ];

    /// <summary>Reads the table <c>[second-check]</c>.</summary>
    internal static SecondCheckRule Read(TomlTable? table, IReadOnlyList<string> people)
    {
        if (table is null)
            return None;
        var rule = new SecondCheckRule(table.Texts("points"), table.Texts("groups"));
        if (rule.Points.Count + rule.Groups.Count == 0)
            table.Mistakes.Add(
                table.Place,
                "neither \"points\" nor \"groups\"",
                "points = [\"axle-nut\"] or groups = [\"brakes\"]"
            );
        else if (people.Count < 2)
            table.Mistakes.Add(table.Place, "a second check in a shop of one", "two people at least in \"people\"");
        table.NoOtherKeys();
        return rule;
    }
}
