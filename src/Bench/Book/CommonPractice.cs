using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>
/// What many in the trade would take where no maker, law or standard says anything. No source stands behind it: it judges nothing
/// until somebody looks at it and takes it for one job.
/// </summary>
/// <param name="Figure">The figure; its origin is always common practice.</param>
/// <param name="Words">Where the habit holds and where it does not.</param>
public sealed record CommonPractice(Figure Figure, string Words);

/// <summary>Common practice with the table it was read from.</summary>
internal sealed record CommonPracticeRead(CommonPractice? Habit, TomlTable Table);

/// <summary>Reads one table <c>[common-practice."tyre.tread"]</c>: a figure as in a sheet, and <c>words</c>.</summary>
internal static class CommonPracticeTable
{
    public static CommonPracticeRead Read(string key, TomlTable table)
    {
        var words = table.Text("words");
        var figure = FigureTable.Read(key, table, []);
        if (figure is { Origin.Kind: not OriginKind.CommonPractice })
            table.Wrong(
                "origin",
                $"\"{figure.Origin.Text}\"",
                "\"common practice\": what has a source belongs in a sheet"
            );
        return new(figure is null ? null : new(figure, words), table);
    }
}
