using System.Net;

namespace Witnessmark.Client.Device;

/// <summary>What the shop answered.</summary>
/// <param name="Status">As HTTP has it.</param>
/// <param name="MediaType">Without its parameters; empty when it said none.</param>
/// <param name="Tag">What the shop calls this state of it, or null.</param>
/// <param name="Text">The body.</param>
internal sealed record ShopAnswer(HttpStatusCode Status, string MediaType, string? Tag, string Text)
{
    public bool IsSuccess => (int)Status is >= 200 and <= 299;

    /// <summary>A fallback page instead of an answer means that no shop stands behind this address.</summary>
    public bool IsJson => MediaType == "application/json";
}
