using Witnessmark.Bench.Day;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Today;

/// <summary>The day as this device knows it: the shop's last plan, held against the jobs as they are now.</summary>
internal sealed class DayBoard(Shop shop, DeviceLedger ledger, TimeProvider clock)
{
    /// <summary>What keeps the shop from planning, or null.</summary>
    public string? Trouble { get; private set; }

    public bool Busy { get; private set; }

    /// <summary>The question of the day with its plan; the question is null when the workshop says too little for one.</summary>
    public (DayQuestion? Question, DayPlan Plan, DayPlanText? From, Sentence? Missing) Now(AtHand hand)
    {
        var (question, missing) = DayOfJobs.Of(hand.Workbench!, hand.Jobs(), clock.GetLocalNow().DateTime);
        if (question is null)
            return (null, new([]), null, missing);
        question = Plannable.Of(question).Question;
        var from = ledger.Facts.Day is { } text ? DayPlanText.Read(text, question) : null;
        question = from?.AsLong(question) ?? question;
        return (question, ByHand.UpToDate(question, from?.Plan ?? new([])), from, null);
    }

    /// <summary>Has the shop plan anew, once it has all that was written here; the last plan stays when it cannot.</summary>
    public async Task Plan(Action changed)
    {
        if (Busy)
            return;
        Busy = true;
        changed();
        try
        {
            var text = await shop.Day();
            await ledger.Remember(facts => facts with { Day = text });
            Trouble = null;
        }
        catch (ShopTrouble trouble)
        {
            Trouble = trouble.Message;
        }
        Busy = false;
        changed();
    }
}
