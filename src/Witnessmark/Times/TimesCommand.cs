using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Times;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Serve;

namespace Witnessmark.Times;

/// <summary><c>witnessmark times</c>: what the shop's own jobs say about the book's times.</summary>
internal static class TimesCommand
{
    public static Command Create()
    {
        var by = new Option<string?>("--by")
        {
            Description = "for whom, one of the shop's people; left out: for anybody",
        };
        var data = new Option<string>("--data")
        {
            Description = "data folder of the shop",
            DefaultValueFactory = _ => "data",
        };
        var group = GroupOption.Create();
        var json = new Option<bool>("--json") { Description = "the answer as JSON" };
        var command = new Command("times", "Planned times that moved from the book's, as the shop's own jobs showed.")
        {
            by,
            data,
            group,
            json,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(by),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(json)
            )
        );
        return command;
    }

    /// <summary>0 answered, 2 the shop's files or its ledger cannot be read, or nobody has that name.</summary>
    private static int Run(string? by, CommandPlace place, bool json)
    {
        try
        {
            return place.In(shop => Run(by, place, shop, json));
        }
        catch (IOException broken)
        {
            return Fail(broken.Message);
        }
    }

    private static int Run(string? by, CommandPlace place, ShopPlace shop, bool json)
    {
        var (bench, mistakes) = place.Bench(shop);
        foreach (var mistake in mistakes)
            Console.Error.WriteLine(mistake);
        if (bench is null)
            return ExitCode.Malformed;
        if (by is not null && !bench.Workshop.People.Contains(by))
            return Fail($"by \"{by}\": one of {string.Join(", ", bench.Workshop.People)} is allowed.");
        var learnt = TimesOnDisk.Learnt(shop, bench.Book);
        var lines = bench
            .Book.Points.Keys.SelectMany(id =>
                new[] { Of(id, "hands", learnt.Hands(id, by)), Of(id, "waits", learnt.Waits(id)) }
            )
            .Where(t => t.Doings > 0)
            .ToArray();
        Print(lines, json);
        return ExitCode.Ok;
    }

    private static void Print(TimeLine[] lines, bool json)
    {
        if (json)
            JsonText.Print(
                (JsonObject)JsonSerializer.SerializeToNode(new { Times = lines }, JsonSerializerOptions.Web)!
            );
        else if (lines.Length == 0)
            Console.WriteLine("No job has shown a time yet: the book's stand.");
        else
            foreach (var t in lines)
                Console.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{t.Point}  {t.What}  {t.Minutes:0.0} min, {From(t)}, by the book {t.BookMinutes:0.0} min"
                    )
                );
    }

    private static string From(TimeLine line) =>
        $"{(line.From == "technician" ? "own" : "the shop's")} of {line.Doings} {(line.Doings == 1 ? "doing" : "doings")}";

    private static TimeLine Of(string point, string what, PlannedTime time) =>
        new(
            point,
            what,
            Math.Round(time.Time.TotalMinutes, 3),
            time.Book.TotalMinutes,
            time.From.ToString().ToLowerInvariant(),
            time.Doings
        );

    private static int Fail(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Malformed;
    }

    private sealed record TimeLine(
        string Point,
        string What,
        double Minutes,
        double BookMinutes,
        string From,
        int Doings
    );
}
