using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary><c>campaigns withdraw</c>: takes a campaign of the shop's own lists back, and keeps who did and why.</summary>
internal static class Withdraw
{
    /// <summary>0 withdrawn, 2 there is no such campaign or something is missing, 3 no list was ever imported.</summary>
    public static int Run(string number, string because, string by, CommandPlace place)
    {
        if (because.Trim().Length == 0)
            return Fail("--because: nothing stands there; say why in a few words.", ExitCode.Malformed);
        if (by.Trim().Length == 0)
            return Fail("--by: nothing stands there; the name of who decides is needed.", ExitCode.Malformed);
        try
        {
            return place.In(shop =>
                shop.CampaignsIfThere() is { } store
                    ? Say(number, store.Withdraw(number, because.Trim(), by.Trim(), TimeProvider.System.GetUtcNow()))
                    : Fail($"No list was imported into {place.Called}. See campaigns import.", ExitCode.Refused)
            );
        }
        catch (LedgerUnavailable broken)
        {
            return Fail(broken.Message, ExitCode.Malformed);
        }
    }

    private static int Say(string number, WithdrawOutcome outcome)
    {
        if (outcome.Done is not { } done)
            return Fail(
                outcome.IsPublic
                    ? $"{number} stands in the public list, which only the regulator changes. Settle it on the job of the machine instead."
                    : $"There is no campaign \"{number}\" in the shop's own lists. Right would be {Nearest.InWords(number, [.. outcome.Standing])}.",
                ExitCode.Malformed
            );
        Console.WriteLine(
            $"{done.Number} is withdrawn by {done.By}: {done.Because}. {(done.Records == 1 ? "Its record" : $"Its {done.Records} records")} and this decision are kept."
        );
        foreach (var list in outcome.StillIn)
            Console.WriteLine(
                $"{list.File}, taken in on {list.At[..10]}, still names it: take it out there, or the next import brings it back."
            );
        return ExitCode.Ok;
    }

    private static int Fail(string why, int code)
    {
        Console.Error.WriteLine(why);
        return code;
    }
}
