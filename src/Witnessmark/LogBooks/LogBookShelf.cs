using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.LogBooks;

/// <summary>The log books that machines brought along, one file for each machine in <c>log-books/</c> of the data folder.</summary>
public sealed class LogBookShelf(string data)
{
    private readonly Lock keeping = new();

    /// <summary>What a machine brought along; nothing where its number is unknown or nothing is kept.</summary>
    public EarlierVisits Of(string? vin) =>
        vin is { Length: > 0 } && File.Exists(PathOf(vin))
            ? EarlierVisits.In(File.ReadAllText(PathOf(vin)))
            : EarlierVisits.None;

    /// <summary>Keeps the visits of a checked file beside those that are there.</summary>
    /// <returns>The machine's number and how many visits are kept now; no number where the file names none.</returns>
    public (string? Vin, int Visits) Keep(string logBook)
    {
        var brought = EarlierVisits.In(logBook);
        if (VinIn(brought) is not { } vin)
            return (null, 0);
        lock (keeping)
        {
            var all = Of(vin).And(brought);
            Directory.CreateDirectory(Path.GetDirectoryName(PathOf(vin))!);
            var half = PathOf(vin) + ".new";
            using (var file = new FileStream(half, FileMode.Create, FileAccess.Write))
            {
                file.Write(System.Text.Encoding.UTF8.GetBytes(LogBookFile.Write(all)));
                file.Flush(flushToDisk: true);
            }
            File.Move(half, PathOf(vin), overwrite: true);
            return (vin, all.Visits.Count);
        }
    }

    /// <summary>The number of the machine that the last visit names.</summary>
    private static string? VinIn(EarlierVisits visits) =>
        visits
            .Visits.Select(v =>
                v.TryGetProperty("machine", out var machine)
                && machine.ValueKind == JsonValueKind.Object
                && machine.TryGetProperty("vin", out var vin)
                    ? vin.ToString()
                    : null
            )
            .LastOrDefault(v => v is { Length: > 0 });

    // A frame number may hold anything, a file's name may not: its hash names the file.
    private string PathOf(string vin) =>
        Path.Combine(data, "log-books", $"{EntryHash.OfText(vin.ToUpperInvariant())[..24]}.json");
}
