using System.Text;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Campaigns;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Machines;

/// <summary>One run of <c>machines import</c>.</summary>
internal sealed class ImportMachines(string file, string? map, CommandPlace place, string? asideFile, bool json)
{
    private const string Nothing = "Nothing was imported.";
    private string? mapBeingRead;

    /// <summary>The exit code.</summary>
    public int Run(CancellationToken cancel)
    {
        if (asideFile is not null && Path.GetFullPath(asideFile) == Path.GetFullPath(file))
            return Fail($"--set-aside {asideFile}: that is the list itself; name another file.");
        try
        {
            return Import(cancel);
        }
        catch (OperationCanceledException)
        {
            return Fail("Stopped. Nothing was imported: the machines are as they were.", ImportRun.Cancelled);
        }
        catch (InvalidDataException wrong)
        {
            return Fail($"{file}: {wrong.Message}. {Nothing}");
        }
        catch (DecoderFallbackException)
        {
            return Fail($"{file}: not UTF-8. Save the list as CSV in UTF-8. {Nothing}");
        }
        catch (LedgerUnavailable broken)
        {
            return Fail($"{Nothing} {broken.Message}");
        }
        catch (Exception broken) when (JsonText.WhyUnreadable(broken, mapBeingRead ?? file) is { } why)
        {
            return Fail(why);
        }
    }

    private int Import(CancellationToken cancel)
    {
        using var list = new CsvList(CsvList.Text(File.OpenRead(file)));
        var (columns, mistakes) = Columns(list.Head);
        if (columns is null)
        {
            foreach (var mistake in mistakes)
                Console.Error.WriteLine(mistake);
            return Fail(Nothing);
        }
        var report = new ImportReport(file, asideFile, columns.NotTaken, everyRow: json);
        var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);
        place.In(shop =>
        {
            shop.Machines().Import(list.Rows().Select(r => Row(r, columns, today)), report.Take, cancel);
            return true;
        });
        report.Finish();
        return ExitCode.Ok;
    }

    private (RegisterColumns?, IReadOnlyList<Mistake>) Columns(IReadOnlyList<string> head) =>
        map is null ? RegisterColumns.ByName(head)
        : map.Contains('=') ? RegisterColumns.Read(map, head)
        : RegisterColumns.Read(MapFile(map), head);

    private SourceText MapFile(string path)
    {
        mapBeingRead = path;
        var text = new SourceText(Path.GetFileName(path), File.ReadAllText(path));
        mapBeingRead = null;
        return text;
    }

    private static RowToImport Row(CsvRow csv, RegisterColumns columns, DateOnly today)
    {
        var (row, why) = csv.Torn
            ? (null, "a quote in the wrong place, or not closed")
            : RegisterRow.Read(columns, csv.Fields, today);
        return new(csv.Line, row, why, csv.Raw);
    }

    private static int Fail(string why, int code = ExitCode.Malformed)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
