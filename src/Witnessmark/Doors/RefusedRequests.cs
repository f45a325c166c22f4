using System.Globalization;

namespace Witnessmark.Doors;

/// <summary>
/// What the server's output tells of requests that were refused: from which address, at which of the API's, and who was signed in. Nothing that came with the request is
/// in it, and of a flood it tells how many. The book of the door, which is kept for good, has no room for strangers.
/// </summary>
/// <param name="write">Writes a line.</param>
/// <param name="clock">The time.</param>
public sealed class RefusedRequests(Action<string> write, TimeProvider clock)
{
    /// <summary>Lines in a minute. Common practice, no source.</summary>
    public const int Most = 60;

    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);
    private readonly Lock one = new();
    private DateTimeOffset begun;
    private int told;

    /// <summary>Tells of each answer that says no because of who asks.</summary>
    public static void Watch(WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger(DoorOutput.Category);
        var refused = new RefusedRequests(
            line => log.LogWarning("{Line}", line),
            app.Services.GetRequiredService<TimeProvider>()
        );
        app.Use(
            async (context, next) =>
            {
                await next(context);
                if (context.Response.StatusCode is 403 or 429 && context.Request.Path.StartsWithSegments("/api"))
                    refused.Tell(Line(context));
            }
        );
    }

    /// <summary>Tells of one, unless the minute is full.</summary>
    public void Tell(string line)
    {
        lock (one)
        {
            if (clock.GetUtcNow() - begun >= Minute)
                Begin();
            if (++told <= Most)
                write(line);
        }
    }

    private void Begin()
    {
        if (told > Most)
            write(string.Create(CultureInfo.InvariantCulture, $"refused {told - Most} more in the minute before"));
        (begun, told) = (clock.GetUtcNow(), 0);
    }

    // the pattern of the address, not what stood in its place
    private static string Line(HttpContext context)
    {
        var at = (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "/api";
        var who = context.Who() is { } known ? $", {known.Person} on {known.Device}" : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"refused {context.Response.StatusCode}: {context.Request.Method} {at} from {context.Connection.RemoteIpAddress}{who}"
        );
    }
}
