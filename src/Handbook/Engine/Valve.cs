using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Engine;

/// <summary>One valve as measured, cold.</summary>
/// <param name="Id">Its name, once in an engine.</param>
/// <param name="Shim">Measured (not stamped) thickness of the shim in it, more than 0, at most 100 mm.</param>
/// <param name="Clearance">Clearance measured with that shim, 0 to 100 mm.</param>
/// <param name="Min">Smallest permitted clearance, 0 to 100 mm.</param>
/// <param name="Max">Largest permitted clearance, not below <paramref name="Min"/>.</param>
/// <param name="Target">Clearance aimed at, within the limit; null for its middle.</param>
public sealed record Valve(string Id, Length Shim, Length Clearance, Length Min, Length Max, Length? Target = null);

/// <summary>The shim thicknesses that can be bought: from, from + step, and so on up to to.</summary>
/// <param name="From">The thinnest, more than 0.</param>
/// <param name="To">The thickest, not below <paramref name="From"/>.</param>
/// <param name="Step">What the next is thicker by, 1 µm or more.</param>
public sealed record ShimSeries(Length From, Length To, Length Step);

/// <summary>Where a shim comes from.</summary>
public enum ShimOrigin
{
    /// <summary>It stays where it is.</summary>
    Own,

    /// <summary>Taken out of another valve.</summary>
    Removed,

    /// <summary>From the shelf.</summary>
    Stock,

    /// <summary>To be bought.</summary>
    Buy,
}

/// <summary>What one valve gets.</summary>
/// <param name="Valve">The valve.</param>
/// <param name="Shim">Thickness of its shim.</param>
/// <param name="From">Where that shim comes from.</param>
/// <param name="Clearance">Clearance to be expected; measure it again after assembly.</param>
public sealed record ShimFit(string Valve, Length Shim, ShimOrigin From, Length Clearance);

/// <summary>Shims for a whole engine.</summary>
/// <param name="Bought">How many must be bought.</param>
/// <param name="SquaredDeviation">Sum of the squared distances from the targets.</param>
/// <param name="Changed">How many valves do not keep their own shim.</param>
/// <param name="Plan">Every valve in the order given.</param>
public sealed record ShimPlan(int Bought, Area SquaredDeviation, int Changed, IReadOnlyList<ShimFit> Plan);
