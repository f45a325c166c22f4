using System.Globalization;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>Something that is used up at a point.</summary>
/// <param name="What"><c>crush washer, new</c>.</param>
/// <param name="Amount">How much: a count such as <c>2</c> or a quantity such as <c>0.1 L</c>; null: as it comes.</param>
/// <param name="Figure">Key of the figure that says how much, or null.</param>
/// <param name="Times">How often that much: 2 for two fork legs when the figure is for one.</param>
public sealed record Consumable(string What, string? Amount = null, string? Figure = null, int Times = 1);

/// <summary>Reads <c>consumables = ["rag", { what = "crush washer, new", amount = "1" }]</c>.</summary>
internal static class ConsumableList
{
    private const string Right =
        "text in quotes, or { what = \"crush washer, new\", amount = \"1\" }, or { what = \"engine oil\", figure = \"oil.capacity\" }";

    public static IReadOnlyList<Consumable> Read(TomlTable table)
    {
        List<Consumable> all = [];
        foreach (var item in Items(table))
            if (Of(item, table.Mistakes) is { } consumable)
            {
                if (all.Any(c => c.What == consumable.What))
                    table.Mistakes.Add(item.Place, $"\"{consumable.What}\" a second time", "each once");
                all.Add(consumable);
            }
        return all;
    }

    /// <summary>The items as they stand in the file.</summary>
    public static IReadOnlyList<TomlValue> Items(TomlTable table) =>
        table.Items("consumables", "a list such as [\"rag\"]");

    private static Consumable? Of(TomlValue item, Mistakes mistakes)
    {
        if (item is TomlText { Text: var text } && !string.IsNullOrWhiteSpace(text))
            return new(text);
        if (item is not TomlTable table)
        {
            mistakes.Add(item.Place, item.InWords, Right);
            return null;
        }
        var consumable = new Consumable(table.Text("what"), Amount(table), table.TextOrNothing("figure"))
        {
            Times = table.WholeOrNothing("times", 1, 100) ?? 1,
        };
        if (consumable is { Amount: not null, Figure: not null })
            table.Mistakes.Add(table.KeyAt("figure"), "\"figure\" beside \"amount\"", "one of the two");
        if (consumable is { Amount: null, Figure: null } && table.Has("times"))
            table.Mistakes.Add(table.KeyAt("times"), "\"times\" of nothing", "\"amount\" or \"figure\" beside it");
        table.NoOtherKeys();
        return consumable;
    }

    private static string? Amount(TomlTable table)
    {
        if (table.TextOrNothing("amount") is not { Length: > 0 } text)
            return null;
        var counted =
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            && count is > 0 and < 1000;
        var measured =
            Written.Read(text, out var written) is null
            && written is { Value: > 0, Unit.Dimension: Dimension.Volume or Dimension.Length or Dimension.Mass };
        if (!counted && !measured)
            table.Wrong("amount", $"\"{text}\"", "a count such as \"2\" or a quantity such as \"0.1 L\"");
        return text;
    }
}
