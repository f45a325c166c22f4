using System.CommandLine;
using Witnessmark.Groups;

namespace Witnessmark.Stock;

/// <summary><c>witnessmark stock</c>: what is on the shelf.</summary>
internal static class StockCommand
{
    /// <summary>The command with its sub-commands.</summary>
    public static Command Create() =>
        new("stock", "What is on the shelf: show, receive, count, reserve, use, return, discard, reorder.")
        {
            Show(),
            Moving("receive", "It came: bought, or taken off a machine and kept with its measured size."),
            Moving("count", "So much is there, whatever the sums say."),
            Moving("reserve", "Keep so much back for a job; 0 frees it."),
            Moving("use", "It was used up on a job. Never refused: more than the sums know asks for a count."),
            Moving("return", "What had been taken for a job came back."),
            Moving("discard", "It was thrown away; --why says why."),
            ToReorder(),
        };

    private static Option<string> Data() =>
        new("--data") { Description = "data folder of the shop", DefaultValueFactory = _ => "data" };

    private static Option<bool> Json() => new("--json") { Description = "the answer as JSON" };

    private static Command Show()
    {
        var text = new Argument<string?>("TEXT")
        {
            Description = "words in id, name, place or use",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var show = new Command("show", "What there is.") { text, data, group, json };
        show.SetAction(parsed =>
            StockOnDisk.Show(
                parsed.GetValue(text),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(json)
            )
        );
        return show;
    }

    private static Command ToReorder()
    {
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var reorder = new Command("reorder", "What has to be ordered, longest lead time first.") { data, group, json };
        reorder.SetAction(parsed =>
            StockOnDisk.ToReorder(CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group), parsed.GetValue(json))
        );
        return reorder;
    }

    private static Command Moving(string kind, string says)
    {
        var item = new Argument<string>("ITEM") { Description = "id of the stock item in shop.toml" };
        var amount = new Argument<string>("AMOUNT") { Description = "pieces, or an amount of what is drawn loose" };
        var by = new Option<string>("--by") { Description = "who, one of the shop's people", Required = true };
        var size = new Option<string?>("--size") { Description = "size of the bottle, or measured size of the piece" };
        var batch = new Option<string?>("--batch") { Description = "what its maker printed on it" };
        var job = new Option<string?>("--job") { Description = "number of the job" };
        var why = new Option<string?>("--why") { Description = "in your own words" };
        var (data, group, json) = (Data(), GroupOption.Create(), Json());
        var command = new Command(kind, says) { item, amount, by, size, batch, job, why, data, group, json };
        command.SetAction(parsed =>
            StockOnDisk.Move(
                new(
                    Guid.NewGuid().ToString("n"),
                    kind,
                    parsed.GetRequiredValue(item),
                    parsed.GetRequiredValue(amount),
                    parsed.GetRequiredValue(by),
                    parsed.GetValue(size),
                    parsed.GetValue(batch),
                    parsed.GetValue(job),
                    parsed.GetValue(why)
                ),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(json)
            )
        );
        return command;
    }
}
