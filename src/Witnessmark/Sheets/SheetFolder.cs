using System.Globalization;
using System.Text;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;
using Witnessmark.Serve;

namespace Witnessmark.Sheets;

/// <summary>The figure sheets in a data folder: the newest revision as <c>NAME.toml</c>, every older one beside it as <c>NAME.r3.toml</c>.</summary>
internal static class SheetFolder
{
    /// <summary>Name of the newest revision's file, as the workbench knows it.</summary>
    public static string NameOf(string sheet) => $"sheets/{sheet}.toml";

    /// <summary>Name of an older revision's file.</summary>
    public static string NameOf(string sheet, int revision) =>
        string.Create(CultureInfo.InvariantCulture, $"sheets/{sheet}.r{revision}.toml");

    /// <summary>
    /// The newest revision among the files, under the name that the newest goes by; null when the shop has no such sheet. It may
    /// still stand under its revision's name, where a machine stopped between the two moves of <see cref="Put"/>.
    /// </summary>
    public static SourceText? Newest(IEnumerable<SourceText> files, string sheet) =>
        files
            .Where(f => f.Name.StartsWith("sheets/", StringComparison.Ordinal))
            .Select(f => (File: f, FigureSheets.Read(f).Sheet))
            .Where(f => f.Sheet?.Id == sheet)
            .OrderByDescending(f => f.Sheet!.Revision)
            .Select(f => f.File with { Name = NameOf(sheet) })
            .FirstOrDefault();

    /// <summary>Puts a revision in place. The one before keeps its text under its own name; nothing is overwritten.</summary>
    /// <remarks>A machine that stops in between leaves the older revision as the newest, never half a file.</remarks>
    /// <exception cref="IOException">The disk is full, or the revision stands there already.</exception>
    public static void Put(DataFolder data, FigureSheet? before, SourceText next)
    {
        Directory.CreateDirectory(data.In("sheets"));
        var path = data.In(next.Name);
        var beside = path + ".new";
        using (var file = new FileStream(beside, FileMode.Create))
        {
            file.Write(Encoding.UTF8.GetBytes(next.Text));
            file.Flush(flushToDisk: true);
        }
        if (before is not null && File.Exists(path))
            File.Move(path, data.In(NameOf(before.Id, before.Revision)));
        File.Move(beside, path);
    }
}
