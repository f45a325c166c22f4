using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures.Plausibility;

/// <summary>Whether a torque can be meant for the bolt that stands beside it.</summary>
/// <remarks>
/// <para><b>Formula.</b> The torque that brings the bolt to 90 % of its yield point (<see cref="BoltPreload"/>), once with little
/// friction and once with much. Above the second it would stretch even a dry bolt; below a tenth of the first it holds nothing.</para>
/// <para><b>Source.</b> VDI 2230-1; friction 0.08 to 0.20 spans oiled to dry steel: common practice, no source. The tenth is our own bound.</para>
/// <para><b>Valid when</b> the thread is metric. An axle is sized for bending, so its nut is often far below the bolt's own torque: not doubted.</para>
/// </remarks>
internal static class BoltTorque
{
    private const double Oiled = 0.08;
    private const double Dry = 0.20;
    private const double HoldsNothing = 0.1;
    private const double Used = 0.9; // of the yield point

    /// <summary>The doubt in words, or null.</summary>
    public static Sentence? Doubt(Figure figure)
    {
        if (figure is not { Kind: FigureKind.Torque, Value: { } value, Bolt: { } bolt })
            return null;
        var torque = figure.Unit.ToBase(value);
        var (least, most) = (Torque(bolt, Oiled), Torque(bolt, Dry));
        return torque > most.NewtonMetres
                ? (Sentence)
                    $"{figure.AsPrinted} would stretch {bolt} beyond its yield point even dry ({Shown(most)} at most): look again at the torque, the thread and the class"
            : torque < HoldsNothing * least.NewtonMetres
                ? (Sentence)
                    $"{figure.AsPrinted} is less than a tenth of what {bolt} takes ({Shown(least)} oiled): look whether the unit is right"
            : null;
    }

    private static Torque Torque(FigureBolt bolt, double friction) =>
        BoltPreload
            .From(MetricThread.Read(bolt.Thread)!.Value, bolt.Class, friction, friction, Used)
            .Certain.Torque!.Value;

    private static Sentence Shown(Torque torque) => Numerals.With(torque.NewtonMetres, UnitTable.Named("N·m"), 3);
}
