using System.Diagnostics;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Tests.Campaigns;

namespace Witnessmark.Benchmarks;

/// <summary>
/// Import of an invented list of a million rows beside <c>.import</c> of the <c>sqlite3</c> shell, which neither reads dates nor
/// knows doubles: allowed are twice its time, and 200 MB of memory.
/// </summary>
internal static class CampaignTimes
{
    private const int Rows = 1_000_000;
    private const double MegaByte = 1e6;

    public static void Print()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-campaigns-").FullName;
        try
        {
            var list = Path.Combine(folder, "recalls.txt");
            using (var file = File.Create(list, 1 << 20))
                new InventedRecalls(seed: 1).Write(file, Rows);
            Console.WriteLine($"{Rows} rows, {new FileInfo(list).Length / MegaByte:0} MB");
            var shell = Shell(folder, list);
            var first = Import(folder, list, "first import");
            Import(folder, list, "again");
            var peak = Process.GetCurrentProcess().PeakWorkingSet64 / MegaByte;
            Console.WriteLine($"peak of this process {peak:0} MB (allowed: 200)");
            Console.WriteLine(
                shell is { } theirs
                    ? $"sqlite3 .import {theirs / 1000:0.0} s; ours takes {first / theirs:0.00} times that (allowed: 2)"
                    : "sqlite3 is not on the PATH (Debian package sqlite3): nothing to compare with"
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static double Import(string folder, string list, string what)
    {
        ImportTotals? totals = null;
        var time = Watch.Once(() =>
        {
            using var file = File.OpenRead(list);
            totals = CampaignStore.Open(folder).ImportPublic(file, "recalls.txt", DateTimeOffset.UtcNow, _ => { });
        });
        Console.WriteLine($"{what}: {time / 1000:0.0} s, {totals}");
        return time;
    }

    private static double? Shell(string folder, string list)
    {
        var columns = string.Join(", ", Enumerable.Range(1, 29).Select(i => $"f{i} TEXT"));
        var script = $"CREATE TABLE recalls ({columns});\n.mode tabs\n.import {list} recalls\n";
        var start = new ProcessStartInfo("sqlite3", [Path.Combine(folder, "shell.db")])
        {
            RedirectStandardInput = true,
        };
        try
        {
            return Watch.Once(() =>
            {
                using var shell = Process.Start(start)!;
                shell.StandardInput.Write(script);
                shell.StandardInput.Close();
                shell.WaitForExit();
            });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
