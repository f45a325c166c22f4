using MathNet.Numerics.RootFinding;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Links that a drive needs, and where the axle then stands with the chain taut.</summary>
/// <remarks>
/// <para><b>Formula.</b> N = T(C)/p with T as in <see cref="ChainSlack"/>, rounded up to an even count; then T(C′) = N·p is solved for C′.</para>
/// <para><b>Units.</b> Links are a count; centre distance and shift in mm.</para>
/// <para><b>Source.</b> Own derivation; the usual formula X ≈ 2C/p + (z₁ + z₂)/2 + ((z₂ − z₁)/2π)²·p/C (ISO 606 design practice, as
/// in Bhandari, Design of Machine Elements, example 14.3) is low by at most 0.003 link. Checked by bisection.</para>
/// <para><b>Valid when</b> the chain is joined by an ordinary link (so the count is even) and is new. The distance is that of
/// the taut loop: slack brings the axle forward of it.</para>
/// </remarks>
public static class ChainLength
{
    // A count that misses an even number only by the rounding of the arithmetic is that number.
    private const double CountNoise = 1e-9;

    /// <summary>The links.</summary>
    /// <param name="sprockets">Teeth and pitch.</param>
    /// <param name="centreDistance">Between the shafts, more than zero and at most 10 m.</param>
    /// <returns>Refused as <c>sprocketsTouch</c>.</returns>
    public static Answer<LinkCount> From(Sprockets sprockets, Length centreDistance)
    {
        if (ChainLoop.Between(sprockets, centreDistance) is not { } loop)
            return LoopRefusal.Touching<LinkCount>();
        var pitch = sprockets.Pitch.Millimetres;
        var exact = loop.Taut / pitch;
        var links = 2 * (int)Math.Ceiling((exact - CountNoise) / 2);
        var longest = centreDistance.Millimetres + pitch / Math.Cos(loop.WrapAngle) + CountNoise;
        var centre = Brent.FindRoot(
            c => ChainLoop.Between(sprockets, new(c))!.Value.Taut - links * pitch,
            // The noise above can make the count a hair too short for this distance.
            Math.Max(centreDistance.Millimetres - pitch * CountNoise, sprockets.FrontRadius + sprockets.RearRadius),
            longest,
            1e-12,
            200
        );
        return new LinkCount(exact, links, new(centre), new Length(centre) - centreDistance);
    }
}

/// <summary>Links of a drive and where they put the axle.</summary>
/// <param name="Exact">Links of the taut loop at the distance given, with the fraction.</param>
/// <param name="Links">The even count at or above it.</param>
/// <param name="CentreDistance">Distance at which that chain is taut.</param>
/// <param name="Shift">How far back that is of the distance given.</param>
public sealed record LinkCount(double Exact, int Links, Length CentreDistance, Length Shift);
