using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Campaigns;

/// <summary>Reads the shop's own list of campaigns, a TOML file with a table <c>[[campaigns]]</c> for each.</summary>
public static class OwnListFile
{
    /// <summary>The campaigns, one for each model year; none when there is a mistake anywhere, and then all mistakes.</summary>
    public static (IReadOnlyList<Campaign> Campaigns, IReadOnlyList<Mistake> Mistakes) Read(SourceText source)
    {
        var mistakes = new Mistakes();
        var file = TomlFile.Read(source, mistakes);
        if (file.Torn)
            return ([], mistakes.Sorted());
        List<(Campaign Campaign, TomlTable Table)> read = [];
        foreach (var table in file.Root.TableList("campaigns"))
            read.AddRange(Years(table).Select(c => (c, table)));
        Doubled(read);
        if (read.Count == 0)
            mistakes.Add(file.Root.Place, "no campaign", "a table [[campaigns]] for each");
        file.Root.NoOtherKeys();
        return mistakes.Count > 0 ? ([], mistakes.Sorted()) : ([.. read.Select(c => c.Campaign)], []);
    }

    private static List<Campaign> Years(TomlTable table)
    {
        var from = table.Whole("year-from", 1885, 2100);
        var to = table.WholeOrNothing("year-to", 1885, 2100) ?? from;
        if (to < from)
            table.Wrong("year-to", "the years are swapped", "year-from the earlier one");
        var first = new Campaign(
            CampaignSource.Own,
            Name(table, "number"),
            Name(table, "make"),
            Name(table, "model"),
            from,
            table.Text("component"),
            Says(table)
        );
        table.NoOtherKeys();
        return [.. Enumerable.Range(from, Math.Max(1, to - from + 1)).Select(year => first with { Year = year })];
    }

    private static string Name(TomlTable table, string key)
    {
        var name = table.Text(key).Trim();
        if (name.Length > 0 && NameKey.Of(name).Length == 0)
            table.Wrong(key, $"\"{name}\"", "a name with a letter or a digit");
        return name;
    }

    private static CampaignText Says(TomlTable table)
    {
        var (from, to) = (table.DayOrNothing("built-from"), table.DayOrNothing("built-to"));
        if (from > to)
            table.Wrong("built-to", "the days are swapped", "built-from the earlier one");
        return new(
            table.TextOrNothing("maker") ?? "",
            table.TextOrNothing("makers-number") ?? "",
            from,
            to,
            table.DayOrNothing("recorded"),
            table.WholeOrNothing("affected", 0, int.MaxValue),
            table.Text("defect"),
            table.Text("consequence"),
            table.Text("remedy"),
            table.TextOrNothing("notes") ?? "",
            table.TruthOrNothing("do-not-ride"),
            table.TruthOrNothing("park-outside"),
            Vins(table)
        );
    }

    private static List<string> Vins(TomlTable table)
    {
        List<string> vins = [];
        foreach (var text in table.Texts("vins"))
        {
            var (range, why) = VinRange.Read(text);
            if (range is not null)
                vins.Add(range.ToString());
            else
                table.Mistakes.Add(table.At("vins", text), $"\"{text}\": {why}", "\"FIRST to LAST\", or one VIN");
        }
        return vins;
    }

    private static void Doubled(IEnumerable<(Campaign Campaign, TomlTable Table)> read)
    {
        foreach (var same in read.GroupBy(r => Key(r.Campaign)).Where(g => g.Count() > 1))
        foreach (var (campaign, table) in same.Skip(1))
            table.Wrong(
                "number",
                $"\"{campaign.Number}\" for {campaign.Make} {campaign.Model} {campaign.Year} a second time",
                "each component once"
            );
    }

    private static (string, string, string, int?, string) Key(Campaign c) =>
        (c.Number, NameKey.Of(c.Make), NameKey.Of(c.Model), c.Year, c.Component);
}
