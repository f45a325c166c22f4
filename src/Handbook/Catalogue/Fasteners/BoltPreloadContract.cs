using Witnessmark.Handbook.Fasteners;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>bolt-preload</c>.</summary>
internal static class BoltPreloadContract
{
    private static readonly Input<string> Thread = Take.Words("thread", MetricThread.Allowed);
    private static readonly Input<string> Class = Take.OneOf(
        "propertyClass",
        "strength marked on the head",
        [.. PropertyClass.All.Select(c => c.Name)]
    );
    private static readonly Input<double> ThreadFriction = Take.Number("threadFriction", "in the thread", 0, 1);
    private static readonly Input<double> HeadFriction = Take.Number("headFriction", "under the head", 0, 1);
    private static readonly Input<double> Utilisation = Take.Number(
            "utilisation",
            "part of the yield strength that is used, above 0",
            0,
            1
        )
        .Or(BoltPreload.UsualUtilisation, "0.9");

    public static Calculation Calculation { get; } =
        new(
            "bolt-preload",
            "Fasteners",
            "Preload and torque of a bolt, for a part of its yield strength.",
            "VDI 2230 part 1 (2001); EN ISO 898-1, ISO 724, ISO 4014, ISO 273",
            typeof(BoltPreload),
            [Thread, Class, ThreadFriction, HeadFriction, Utilisation],
            [
                new("stressArea", "mm²", "of the thread"),
                new("preload", "N", "clamping force"),
                new("torque", "N·m", "that gives it"),
                new("proofLoad", "N", "that the bolt bears without stretching for good"),
            ],
            Load
        );

    private static Reply Load(Given given)
    {
        var written = given.Of(Thread);
        if (MetricThread.Read(written) is not { } thread)
            throw given.Wrong("thread", $"\"{written}\"", MetricThread.Allowed);
        var utilisation = given.Of(Utilisation);
        if (utilisation == 0)
            throw given.Wrong("utilisation", "0", "above 0, at most 1");
        var name = given.Of(Class);
        return Reply.To(
            BoltPreload.From(
                thread,
                PropertyClass.All.Single(c => c.Name == name),
                given.Of(ThreadFriction),
                given.Of(HeadFriction),
                utilisation
            ),
            a =>
                new Gives()
                    .With("stressArea", a.StressArea, "mm²")
                    .With("preload", a.Preload, "N")
                    .With("torque", a.Torque, "N·m")
                    .With("proofLoad", a.ProofLoad, "N")
        );
    }
}
