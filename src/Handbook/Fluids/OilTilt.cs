using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>How far a leaning machine falsifies the oil level read on a stick or in a glass beside the middle of the sump.</summary>
/// <remarks>
/// <para><b>Formula.</b> shift = u·tan θ; level error = shift/h, with u from the middle of the oil surface to the stick, θ the lean and
/// h between the marks. Positive when the stick stands on the side that leans down: it then reads too high.</para>
/// <para><b>Units.</b> Lengths in mm along the machine's own vertical, the angle in any unit, the error in parts of the distance of the marks.</para>
/// <para><b>Source.</b> Own derivation: the surface of a box-shaped sump turns about its middle. Checked by cutting the sump into slices
/// and searching the level that holds the same oil.</para>
/// <para><b>Valid when</b> the sump is a box about as wide as its surface and its floor stays covered, up to 10°. Level the machine
/// as the maker says rather than correct for its lean.</para>
/// </remarks>
public static class OilTilt
{
    /// <summary>Farther over than this the surface no longer turns about its middle in a real sump: common practice, no source.</summary>
    public static readonly Angle Farthest = new(10 * Math.PI / 180);

    // 10 degrees written in radians are 10 degrees.
    private const double Rounding = 1e-12;

    /// <summary>The error of a reading taken at this lean.</summary>
    /// <param name="tilt">θ, either sign.</param>
    /// <param name="stickOffset">u, either sign.</param>
    /// <param name="marksApart">h, more than zero.</param>
    /// <returns>Refused as <c>tooFarOver</c> beyond 10°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The marks are not apart.</exception>
    public static Answer<TiltedLevel> Of(Angle tilt, Length stickOffset, Length marksApart)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(marksApart.Millimetres, 0, nameof(marksApart));
        if (Math.Abs(tilt.Radians) > Farthest.Radians + Rounding)
            return Answer<TiltedLevel>.Refuse(
                "tooFarOver",
                $"More than 10° over, as on a side stand, the reading cannot be corrected: hold the machine as the maker says and read again."
            );
        var shift = stickOffset * Math.Tan(tilt.Radians);
        return new TiltedLevel(shift, shift / marksApart);
    }
}

/// <summary>What the lean does to a reading.</summary>
/// <param name="Shift">How much higher the oil stands at the stick.</param>
/// <param name="Error">The same in parts of the distance of the marks; take it off the level read.</param>
public sealed record TiltedLevel(Length Shift, double Error);
