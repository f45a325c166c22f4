using Microsoft.AspNetCore.HttpOverrides;

namespace Witnessmark.Serve;

/// <summary>A reverse proxy says for whom it asks, by which scheme and to which name; only the shop's own are believed.</summary>
public static class BehindProxy
{
    /// <summary>Before anything that looks at who asks.</summary>
    public static void UseBehindProxy(this WebApplication app, Listening listening)
    {
        if (listening.Behind.Count == 0)
            return;
        var options = new ForwardedHeadersOptions
        {
            ForwardedHeaders =
                ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto | ForwardedHeaders.XForwardedHost,
            ForwardLimit = 1, // what the proxy itself wrote; what stands before it anybody could have sent
        };
        options.KnownProxies.Clear(); // by default whoever sits at this computer is believed
        options.KnownIPNetworks.Clear();
        foreach (var proxy in listening.Behind)
            options.KnownProxies.Add(proxy);
        app.UseForwardedHeaders(options);
    }
}
