using MathNet.Numerics;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>How many links each tooth meets: the more, the more evenly they wear together.</summary>
/// <remarks>
/// <para><b>Formula.</b> A tooth of z meets N/gcd(N, z) links; fully hunting when that is N for both sprockets.</para>
/// <para><b>Units.</b> Counts.</para>
/// <para><b>Source.</b> Own derivation (a tooth meets every z-th link, modulo N); checked by enumeration.</para>
/// <para><b>Valid when</b> the chain does not jump teeth.</para>
/// </remarks>
public static class ToothHunting
{
    /// <summary>Links met by one tooth of each sprocket.</summary>
    /// <param name="frontTeeth">More than zero.</param>
    /// <param name="rearTeeth">More than zero.</param>
    /// <param name="links">More than zero.</param>
    public static LinksMet From(int frontTeeth, int rearTeeth, int links)
    {
        var front = links / (int)Euclid.GreatestCommonDivisor(links, frontTeeth);
        var rear = links / (int)Euclid.GreatestCommonDivisor(links, rearTeeth);
        return new(front, rear, front == links && rear == links);
    }
}

/// <summary>Links that one tooth meets.</summary>
/// <param name="PerFrontTooth">Of the front sprocket.</param>
/// <param name="PerRearTooth">Of the rear sprocket.</param>
/// <param name="FullyHunting">Whether both meet every link.</param>
public readonly record struct LinksMet(int PerFrontTooth, int PerRearTooth, bool FullyHunting);
