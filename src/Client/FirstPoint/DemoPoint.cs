using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.FirstPoint;

/// <summary>The point of the invented workshop by which somebody learns the loop.</summary>
internal static class DemoPoint
{
    /// <summary>The job that the demo opens.</summary>
    public const string Job = "412";

    /// <summary>Its address.</summary>
    public const string Address = $"jobs/{Job}/bench/{InventedChain.Point}";

    /// <summary>Whether whoever works here is led.</summary>
    public static bool Leads(AtHand hand) => hand.IsDemo && !hand.Settings.Now.GoesAlone;

    /// <summary>Whether they are led at this point of this job.</summary>
    public static bool LeadsAt(AtHand hand, string job, string point) =>
        job == Job && point == InventedChain.Point && Leads(hand);

    /// <summary>Whether there is the point, and whoever works here has marked nothing yet.</summary>
    public static bool Awaits(AtHand hand) =>
        Leads(hand)
        && hand.Job(Job)?.Points.Any(p => p.Point.Id == InventedChain.Point) == true
        && !hand.Ledger.Jobs.SelectMany(hand.Ledger.Of).Any(e => e.Kind == EntryKind.Mark && e.By == hand.Person);
}
