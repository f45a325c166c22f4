using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>How much coolant to drain and to replace by concentrate or water to reach another share of glycol.</summary>
/// <remarks>
/// <para><b>Formula.</b> x = V·(c₁ − c₀)/(c_c − c₀): drain x of the mixture at c₀, add x of what has c_c.</para>
/// <para><b>Units.</b> Volumes in L, shares of glycol in % by volume; c_c 100 % pure glycol, 0 % water.</para>
/// <para><b>Source.</b> Own derivation: the glycol left and the glycol added make c₁·V. Volumes of glycol and water are not additive
/// (about 1 % contraction, from memory), which is left out.</para>
/// <para><b>Valid when</b> the system is full and mixed, and what is drained is the mixture. Where the block keeps part of it, drain and add in
/// turns, run warm between, and measure with a refractometer for that glycol (ASTM D3321).</para>
/// </remarks>
public static class CoolantMix
{
    // Shares written in different units may differ by a rounding and are the same share.
    private const double Rounding = 1e-12;

    /// <summary>The volume to exchange.</summary>
    /// <param name="system">V, more than zero.</param>
    /// <param name="now">c₀, 0 to 1.</param>
    /// <param name="wanted">c₁, 0 to 1.</param>
    /// <param name="filledWith">c_c, 0 to 1.</param>
    /// <returns>Refused as <c>outOfReach</c> when that filling cannot bring the mixture there, even with all drained.</returns>
    public static Answer<Exchange> Of(Volume system, Ratio now, Ratio wanted, Ratio filledWith)
    {
        var (change, most) = ((wanted - now).Value, (filledWith - now).Value);
        if (Math.Abs(change) <= Rounding)
            return new Exchange(new(0));
        if (change * most < 0 || Math.Abs(change) > Math.Abs(most) + Rounding)
            return Answer<Exchange>.Refuse(
                "outOfReach",
                $"What is filled in cannot bring the mixture there, even with everything drained: take concentrate to raise the share of glycol, water to lower it."
            );
        return new Exchange(system * (change / most));
    }
}

/// <summary>An exchange of coolant.</summary>
/// <param name="Volume">To drain, and to add again.</param>
public sealed record Exchange(Volume Volume);
