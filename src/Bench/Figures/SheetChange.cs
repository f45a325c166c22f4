using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>One change of a figure sheet, as it stands at the end of the sheet: who changed what, when and why.</summary>
/// <param name="Revision">The revision that it made.</param>
/// <param name="Figure">Key of the figure, or null when the whole sheet was taken in from a file.</param>
/// <param name="By">The person.</param>
/// <param name="On">The day.</param>
/// <param name="Why">In the person's words.</param>
/// <param name="Was">The figure as it stood before, or null when there was none.</param>
/// <param name="Now">The figure as it stands since, or null for a whole sheet.</param>
public sealed record SheetChange(
    int Revision,
    string? Figure,
    string By,
    DateOnly On,
    string Why,
    string? Was,
    string? Now
)
{
    /// <summary>Reads one table <c>[[changes]]</c>.</summary>
    /// <param name="table">The table.</param>
    /// <param name="newest">The sheet's revision; no change made a later one.</param>
    internal static SheetChange Read(TomlTable table, int newest)
    {
        var on = table.DayOrNothing("on");
        if (!table.Has("on"))
            table.Mistakes.Add(table.Place, "\"on\" is missing", "on = a day such as 2026-03-31, without quotes");
        var change = new SheetChange(
            table.Whole("revision", 1, newest),
            table.TextOrNothing("figure"),
            table.Text("by"),
            on ?? DateOnly.MinValue,
            table.Text("why"),
            table.TextOrNothing("was"),
            table.TextOrNothing("now")
        );
        table.NoOtherKeys();
        return change;
    }

    /// <summary>As it is written at the end of a sheet.</summary>
    internal string Toml()
    {
        var lines = new List<string>
        {
            "[[changes]]",
            string.Create(CultureInfo.InvariantCulture, $"revision = {Revision}"),
        };
        if (Figure is not null)
            lines.Add($"figure = {TomlQuote.Of(Figure)}");
        lines.Add($"by = {TomlQuote.Of(By)}");
        lines.Add($"on = {On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        lines.Add($"why = {TomlQuote.Of(Why)}");
        if (Was is not null)
            lines.Add($"was = {TomlQuote.Of(Was)}");
        if (Now is not null)
            lines.Add($"now = {TomlQuote.Of(Now)}");
        return string.Join('\n', lines) + "\n";
    }
}
