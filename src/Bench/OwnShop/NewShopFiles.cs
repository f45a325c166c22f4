using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.OwnShop;

/// <summary>The files of a new shop: <c>shop.toml</c>, and the empty figure sheet of its first machine. They are read back before they count.</summary>
public static class NewShopFiles
{
    private const string ShopFile = "shop.toml";
    private static readonly string[] Stays = ["book/", "own-book/"];

    /// <summary>The files, or the mistakes that the reader of the files finds in them.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="before">All files of the shop before it; its bench book stays.</param>
    /// <param name="taken">Names by which entries know other shops.</param>
    public static (IReadOnlyList<SourceText>? Files, IReadOnlyList<Mistake> Mistakes) Of(
        NewShop shop,
        IEnumerable<SourceText> before,
        IReadOnlyCollection<string> taken
    )
    {
        var files = Written(shop, taken);
        var book = before.Where(f => Stays.Any(folder => f.Name.StartsWith(folder, StringComparison.Ordinal)));
        var (_, mistakes) = WorkbenchFiles.Read([.. book, .. files]);
        return mistakes.Count > 0 ? (null, mistakes) : (files, []);
    }

    /// <summary>The name by which entries know a shop: small letters, digits and hyphens, and no other shop's.</summary>
    public static string IdOf(string name, IReadOnlyCollection<string> taken)
    {
        var id = Slug(name, "shop");
        return taken.Contains(id) ? $"{id}-own" : id;
    }

    internal static IReadOnlyList<SourceText> Written(NewShop shop, IReadOnlyCollection<string> taken)
    {
        var sheet = shop.Machine is { } machine ? Slug(machine.Name, "machine") : null;
        var file = new TomlLines();
        Head(file, shop, taken);
        foreach (var instrument in shop.Instruments)
            Instrument(file, instrument);
        if (shop.Machine is { } first)
            Machine(file, first, sheet!);
        SourceText text = new(ShopFile, file.ToString());
        return shop.Machine is { } built ? [text, new($"sheets/{sheet}.toml", Sheet(built))] : [text];
    }

    private static void Head(TomlLines file, NewShop shop, IReadOnlyCollection<string> taken) =>
        file.Table("workshop")
            .Text("id", IdOf(shop.Name, taken))
            .Text("name", shop.Name)
            .Texts("people", shop.People)
            .Texts("leads", [shop.Lead])
            .Text("jurisdiction", shop.Jurisdiction)
            .Text("paper", shop.Paper)
            .Text("language", shop.Language);

    private static void Instrument(TomlLines file, NewInstrument tool) =>
        file.Table("instruments", tool.Id)
            .Text("name", tool.Name)
            .Text("kind", tool.Kind)
            .Text("unit", tool.Unit)
            .Text("resolution", tool.Resolution)
            .Text("error", tool.Error)
            .Text("replacing", tool.Replacing)
            .Whole("decimals", tool.Decimals)
            .Text("from", tool.From)
            .Text("to", tool.To)
            .Text("lever", tool.Lever)
            .Day("checked", tool.Checked)
            .Text("check-every", tool.CheckEvery);

    private static void Machine(TomlLines file, NewMachine machine, string sheet) =>
        file.Table("machines", sheet)
            .Text("name", machine.Name)
            .Text("make", machine.Make)
            .Text("vin", machine.Vin)
            .Text("plate", machine.Plate)
            .Whole("year", machine.Year)
            .Text("sheet", sheet);

    private static string Sheet(NewMachine machine)
    {
        var file = new TomlLines();
        file.Table("sheet")
            .Text("name", machine.Name)
            .Text("years", machine.Year is { } year ? TomlLines.Digits(year) : "not known")
            .Text("drive", machine.Drive)
            .Whole("cylinders", machine.Cylinders)
            .Whole("revision", 1)
            .Table("facts");
        foreach (var (name, word) in machine.Facts.OrderBy(f => f.Key, StringComparer.Ordinal))
            file.Word(name, word);
        return file.ToString();
    }

    private static string Slug(string name, string otherwise)
    {
        var letters = name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-');
        var id = string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return id.Length == 0 ? otherwise : id[..Math.Min(id.Length, LongestId)].Trim('-');
    }

    // it is a file's name, too
    private const int LongestId = 40;
}
