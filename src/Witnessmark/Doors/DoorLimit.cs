using System.Threading.RateLimiting;
using Witnessmark.Serve;

namespace Witnessmark.Doors;

/// <summary>How often one address may knock. The waits of <see cref="Waits"/> guard a name; this guards the computer, for a secret takes a while to check.</summary>
internal static class DoorLimit
{
    private const string Name = "door";
    private const int InOneMinute = 60;

    /// <summary>This address knocks at the door.</summary>
    public static T Limited<T>(this T endpoint)
        where T : IEndpointConventionBuilder => endpoint.RequireRateLimiting(Name);

    /// <summary>Counts.</summary>
    public static IServiceCollection AddDoorLimit(this IServiceCollection services) =>
        services.AddRateLimiter(limits =>
        {
            limits.AddPolicy(
                Name,
                context =>
                    RateLimitPartition.GetFixedWindowLimiter(
                        context.Connection.RemoteIpAddress?.ToString() ?? "",
                        _ => new FixedWindowRateLimiterOptions
                        {
                            PermitLimit = InOneMinute,
                            Window = TimeSpan.FromMinutes(1),
                        }
                    )
            );
            limits.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(DeviceLimit.Of);
            limits.OnRejected = (refused, _) =>
                new(Failure.Said(429, $"Too often. Wait a minute.").ExecuteAsync(refused.HttpContext));
        });
}
