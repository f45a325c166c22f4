using System.Text.Json.Nodes;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>One run of <c>campaigns import</c>.</summary>
internal sealed class ImportRun(string file, CommandPlace place, string? asideFile, bool json)
{
    /// <summary>What a shell calls a program that Ctrl+C ended.</summary>
    public const int Cancelled = 130;

    private static readonly byte[] Packed = [(byte)'P', (byte)'K', 3, 4];

    /// <summary>The exit code.</summary>
    public int Run(CancellationToken cancel)
    {
        try
        {
            return IsToml ? Own() : Public(cancel);
        }
        catch (OperationCanceledException)
        {
            return Fail("Stopped. Nothing was imported: the campaigns are as they were.", Cancelled);
        }
        catch (LedgerUnavailable broken)
        {
            return Fail($"Nothing was imported. {broken.Message}", ExitCode.Malformed);
        }
        catch (Exception broken) when (JsonText.WhyUnreadable(broken, file) is { } why)
        {
            return Fail(why, ExitCode.Malformed);
        }
    }

    private bool IsToml => Path.GetExtension(file).Equals(".toml", StringComparison.OrdinalIgnoreCase);

    private int Own()
    {
        var (campaigns, mistakes) = OwnListFile.Read(new(Path.GetFileName(file), File.ReadAllText(file)));
        if (mistakes.Count > 0)
        {
            foreach (var mistake in mistakes)
                Console.Error.WriteLine(mistake);
            return Fail("Nothing was imported.", ExitCode.Malformed);
        }
        return Say(place.In(shop => shop.Campaigns().ImportOwn(campaigns, Path.GetFileName(file), Now())), []);
    }

    private int Public(CancellationToken cancel)
    {
        if (asideFile is not null && Path.GetFullPath(asideFile) == Path.GetFullPath(file))
            return Fail($"--set-aside {asideFile}: that is the list itself; name another file.", ExitCode.Malformed);
        using var list = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
        if (IsPacked(list))
            return Fail($"{file}: a packed file (zip). Unpack it and import the text inside.", ExitCode.Malformed);
        using var aside = new AsideFile(asideFile);
        using var progress = new ProgressLine();
        var totals = place.In(shop =>
            shop.Campaigns().ImportPublic(list, Path.GetFileName(file), Now(), aside.Take, progress.Show, cancel)
        );
        progress.Dispose();
        return Say(totals, aside.First);
    }

    private static bool IsPacked(FileStream list)
    {
        var head = new byte[Packed.Length];
        var read = list.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        list.Position = 0;
        return read == head.Length && head.AsSpan().SequenceEqual(Packed);
    }

    private static DateTimeOffset Now() => TimeProvider.System.GetUtcNow();

    private int Say(ImportTotals totals, IReadOnlyList<string> first)
    {
        if (json)
            JsonText.Print(
                new JsonObject
                {
                    ["file"] = file,
                    ["rows"] = totals.Rows,
                    ["new"] = totals.New,
                    ["updated"] = totals.Updated,
                    ["unchanged"] = totals.Unchanged,
                    ["duplicates"] = totals.Duplicates,
                    ["setAside"] = totals.SetAside,
                }
            );
        else
            Console.WriteLine(
                $"{totals.Rows} rows: {totals.New} new, {totals.Updated} updated, {totals.Unchanged} unchanged, "
                    + $"{totals.Duplicates} duplicates, {totals.SetAside} set aside."
            );
        foreach (var row in first)
            Console.Error.WriteLine(row);
        if (totals.SetAside > first.Count)
            Console.Error.WriteLine($"… and {totals.SetAside - first.Count} more{Where}.");
        return ExitCode.Ok;
    }

    private string Where => asideFile is null ? "; --set-aside FILE keeps them all" : $", all of them in {asideFile}";

    private static int Fail(string why, int code)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
