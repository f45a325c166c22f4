using System.Text;
using System.Text.Json.Nodes;
using Witnessmark.Calc;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Machines;

/// <summary>What an import says: totals, and of each row what became of it.</summary>
internal sealed class ImportReport(string file, string? asideFile, IReadOnlyList<string> notTaken, bool everyRow)
{
    private const int MostToSay = 10;
    private readonly long[] counts = new long[Enum.GetValues<RowOutcome>().Length];
    private readonly JsonArray rows = [];
    private readonly List<string> first = [];
    private readonly StringBuilder aside = new();

    public void Take(ImportedRow row)
    {
        counts[(int)row.Outcome]++;
        if (everyRow)
            rows.Add(Json(row));
        if (row.Outcome != RowOutcome.SetAside)
            return;
        if (first.Count < MostToSay)
            first.Add($"line {row.Line}: {row.Why}");
        if (asideFile is not null)
            aside.Append($"{row.Line}\t{row.Why}\t{row.Raw}\n");
    }

    /// <summary>Says it, once everything is on disk.</summary>
    public void Finish()
    {
        if (asideFile is not null)
            File.WriteAllText(asideFile, aside.ToString());
        if (everyRow)
            JsonText.Print(Json());
        else
            Console.WriteLine(
                $"{counts.Sum()} rows: {Of(RowOutcome.Taken)} taken, {Of(RowOutcome.Updated)} updated, {Of(RowOutcome.Same)} the same, "
                    + $"{Of(RowOutcome.SetAside)} set aside."
            );
        if (notTaken.Count > 0)
            Console.Error.WriteLine($"Not taken from the list: {string.Join(", ", notTaken.Select(c => $"\"{c}\""))}.");
        foreach (var row in first)
            Console.Error.WriteLine(row);
        if (Of(RowOutcome.SetAside) > first.Count)
            Console.Error.WriteLine($"… and {Of(RowOutcome.SetAside) - first.Count} more{Where}.");
    }

    private string Where => asideFile is null ? "; --set-aside FILE keeps them all" : $", all of them in {asideFile}";

    private long Of(RowOutcome outcome) => counts[(int)outcome];

    private JsonObject Json() =>
        new()
        {
            ["file"] = file,
            ["rows"] = counts.Sum(),
            ["taken"] = Of(RowOutcome.Taken),
            ["updated"] = Of(RowOutcome.Updated),
            ["same"] = Of(RowOutcome.Same),
            ["setAside"] = Of(RowOutcome.SetAside),
            ["notTaken"] = new JsonArray([.. notTaken.Select(c => JsonValue.Create(c))]),
            ["each"] = rows,
        };

    private static JsonObject Json(ImportedRow row)
    {
        var json = new JsonObject
        {
            ["line"] = row.Line,
            ["id"] = row.Id,
            ["outcome"] = row.Outcome switch
            {
                RowOutcome.Taken => "taken",
                RowOutcome.Updated => "updated",
                RowOutcome.Same => "same",
                _ => "set-aside",
            },
        };
        if (row.Why is { } why)
            json["why"] = why;
        return json;
    }
}
