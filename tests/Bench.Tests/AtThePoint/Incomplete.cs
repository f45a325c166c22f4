using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.AtThePoint;

/// <summary>The demo workshop whose sheet lost the figures of the front pads (safety), the plugs' torque and the tyres' age.</summary>
internal static class Incomplete
{
    public static readonly NamedDocument Manual = new("manual", "Fell 640 workshop manual", "1, 2024");

    public static Workbench Bench { get; } = Without("pads.front", "axle.nut", "tyre.age");

    public static AtWork Arrives(string device = "tablet") => new AtWork(device, Bench).Arrives();

    public static AtWork Gives(
        this AtWork work,
        string point,
        string demand,
        string printed,
        string origin = "maker: manual p. 71",
        string? key = null
    ) =>
        work.Writes(
            EntryKind.Figure,
            EntryBody.Figure(
                point,
                new(key ?? AtWork.Bench.Book.Points[point].JudgedBy!, demand, printed, origin),
                origin.StartsWith("maker: manual", StringComparison.Ordinal) ? Manual : null
            )
        );

    public static JobState Together(params AtWork[] devices) =>
        JobFold.Of(AtWork.Job, devices.SelectMany(d => d.Entries), Bench);

    internal static Workbench Without(params string[] keys)
    {
        var bench = DemoFiles.Bench;
        return bench with
        {
            Sheets =
            [
                .. bench.Sheets.Select(s =>
                    s with
                    {
                        Figures = s.Figures.Where(f => !keys.Contains(f.Key)).ToDictionary(f => f.Key, f => f.Value),
                    }
                ),
            ],
        };
    }
}
