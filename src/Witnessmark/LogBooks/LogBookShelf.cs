using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.LogBooks;

/// <summary>The log books that machines brought along, one for each machine.</summary>
/// <param name="find">What is kept under a name, or null.</param>
/// <param name="change">Changes what is kept under a name; nobody else does meanwhile.</param>
public sealed class LogBookShelf(Func<string, string?> find, Action<string, Func<string?, string>> change)
{
    /// <summary>Those of a data folder.</summary>
    public static LogBookShelf In(string data)
    {
        var files = new LogBookFiles(data);
        return new(files.Find, files.Change);
    }

    /// <summary>What a machine brought along; nothing where its number is unknown or nothing is kept.</summary>
    public EarlierVisits Of(string? vin) => vin is { Length: > 0 } ? Read(find(NameOf(vin))) : EarlierVisits.None;

    /// <summary>Keeps the visits of a checked file beside those that are there.</summary>
    /// <returns>The machine's number and how many visits are kept now; no number where the file names none.</returns>
    public (string? Vin, int Visits) Keep(string logBook)
    {
        var brought = EarlierVisits.In(logBook);
        if (VinIn(brought) is not { } vin)
            return (null, 0);
        var all = brought;
        change(
            NameOf(vin),
            before =>
            {
                all = Read(before).And(brought);
                return LogBookFile.Write(all);
            }
        );
        return (vin, all.Visits.Count);
    }

    private static EarlierVisits Read(string? kept) => kept is null ? EarlierVisits.None : EarlierVisits.In(kept);

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
    private static string NameOf(string vin) => EntryHash.OfText(vin.ToUpperInvariant())[..24];
}
