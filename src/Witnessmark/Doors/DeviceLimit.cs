using System.Threading.RateLimiting;

namespace Witnessmark.Doors;

/// <summary>How often one device may ask, whoever is signed in on it: a program gone wild, or a hand that holds a key down, must not keep the shop from the others.</summary>
/// <remarks>
/// Common practice, no source. A device at work asks about once a second; it brings up to 200 entries at a time, so two hundred devices bring far more than they write. Papers
/// are drawn anew each time, and photographs fill the disk. While the door is open only the shop's own computer asks, which is not counted.
/// </remarks>
public static class DeviceLimit
{
    /// <summary>Requests in a minute.</summary>
    public const int InOneMinute = 1200;

    /// <summary>Of these, papers.</summary>
    public const int Papers = 60;

    /// <summary>Of these, photographs that are brought.</summary>
    public const int Photographs = 120;

    /// <summary>What a request counts against.</summary>
    public static RateLimitPartition<string> Of(HttpContext context)
    {
        if (context.Who() is not { } who)
            return RateLimitPartition.GetNoLimiter("");
        var (kind, most) = KindOf(context);
        return RateLimitPartition.GetFixedWindowLimiter(
            $"{kind} {who.Device}",
            _ => new FixedWindowRateLimiterOptions { PermitLimit = most, Window = TimeSpan.FromMinutes(1) }
        );
    }

    private static (string Kind, int Most) KindOf(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<Needs>()?.Export is not null ? ("papers", Papers)
        : HttpMethods.IsPut(context.Request.Method) && context.Request.Path.StartsWithSegments("/api/photographs")
            ? ("photographs", Photographs)
        : ("all", InOneMinute);
}
