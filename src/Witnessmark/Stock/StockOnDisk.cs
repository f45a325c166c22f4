using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Serve;

namespace Witnessmark.Stock;

/// <summary><c>witnessmark stock</c> in a data folder. 0 done, 2 the request or the shop's files cannot be read, 3 refused.</summary>
internal static class StockOnDisk
{
    public static int Show(string? find, CommandPlace at, bool json) =>
        InShop(
            at,
            (shop, place) =>
            {
                var answer = StockAnswer.Of(shop.Stock, ShelfIn(place), Tongue.Written, find);
                if (json)
                    return Print(answer);
                foreach (var item in answer.Items)
                    Write(item);
                if (answer.Items.Count == 0)
                    Console.WriteLine(
                        find is null ? "shop.toml names no stock." : "Nothing on the shelf has that in it."
                    );
                return ExitCode.Ok;
            }
        );

    public static int ToReorder(CommandPlace at, bool json) =>
        InShop(
            at,
            (shop, place) =>
            {
                var answer = StockAnswer.Of(shop.Stock, ShelfIn(place), Tongue.Written);
                if (json)
                    return Print(new { answer.ToOrder });
                foreach (var order in answer.ToOrder)
                    Console.WriteLine(
                        $"{order.Item}  {order.Name}  {Free(order.Free)}, ordered at {order.ReorderAt}  {Lead(order.LeadDays)}"
                            + (order.Overpromised ? "  more is promised to jobs than is there" : "")
                    );
                if (answer.ToOrder.Count == 0)
                    Console.WriteLine("Nothing has to be ordered.");
                return ExitCode.Ok;
            }
        );

    public static int Move(MoveAsked asked, CommandPlace at, bool json) =>
        InShop(
            at,
            (shop, place) =>
            {
                var (answer, wrong, refused) = asked.Take(
                    shop,
                    place.Stock,
                    TimeProvider.System.GetLocalNow(),
                    Tongue.Written
                );
                if (answer is null)
                    return Fail(wrong ?? refused!, wrong is null ? ExitCode.Refused : ExitCode.Malformed);
                if (json)
                    return Print(answer);
                Console.WriteLine(Line(answer.Name, answer.Line, shop.Stock[answer.Item].Counted?.Symbol));
                if (answer.Line.Warning is { } warning)
                    Console.WriteLine(warning);
                return ExitCode.Ok;
            }
        );

    private static Shelf ShelfIn(ShopPlace place) => place.StockIfThere()?.Shelf() ?? Shelf.Empty;

    private static int InShop(CommandPlace at, Func<Workshop, ShopPlace, int> work)
    {
        try
        {
            return at.In(place =>
            {
                var (bench, mistakes) = at.Bench(place);
                foreach (var mistake in mistakes)
                    Console.Error.WriteLine(mistake);
                return bench is null ? ExitCode.Malformed : work(bench.Workshop, place);
            });
        }
        catch (IOException broken)
        {
            return Fail(broken.Message, ExitCode.Malformed);
        }
    }

    private static void Write(StockItemAnswer item)
    {
        var place = item.Place is null ? "" : $"  {item.Place}";
        if (item.Lines.Count == 0)
            Console.WriteLine($"{item.Item}  {item.Name}: {Reorder.Nobody}{place}");
        foreach (var line in item.Lines)
        {
            Console.WriteLine($"{item.Item}  {Line(item.Name, line, item.Unit)}{place}");
            if (line.Warning is { } warning)
                Console.WriteLine($"    {warning}");
        }
    }

    private static string Line(string name, StockLineAnswer line, string? unit)
    {
        string Said(decimal amount) => Amounts.Text(amount) + (unit is null ? "" : $" {unit}");
        var what = string.Join(", ", new[] { name, line.Size, line.Batch }.OfType<string>());
        return $"{what}: {Said(line.There)} there" + (line.Kept > 0 ? $", {Said(line.Kept)} kept back for jobs" : "");
    }

    private static string Free(string free) => free == Reorder.Nobody ? free : $"{free} free";

    private static string Lead(int? days) =>
        days switch
        {
            null => "lead time not said",
            1 => "1 day",
            { } more => $"{more} days",
        };

    private static int Print(object answer)
    {
        JsonText.Print((JsonObject)JsonSerializer.SerializeToNode(answer, JsonSerializerOptions.Web)!);
        return ExitCode.Ok;
    }

    private static int Fail(string why, int code)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
