namespace Witnessmark.Serve;

/// <summary>What every answer says about how it may be used.</summary>
/// <remarks>'wasm-unsafe-eval' lets WebAssembly be compiled and nothing else; there is no inline script.</remarks>
public static class ResponseHeaders
{
    private const string Policy =
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; "
        + "connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Sets them on each answer.</summary>
    public static void UseResponseHeaders(this WebApplication app) =>
        app.Use(
            (context, next) =>
            {
                context.Response.OnStarting(() =>
                {
                    Set(context.Response.Headers, context.Request.Path);
                    return Task.CompletedTask;
                });
                return next(context);
            }
        );

    private static void Set(IHeaderDictionary headers, PathString path)
    {
        if (headers.ContentSecurityPolicy.Count == 0) // a page that needs nothing at all says so itself
            headers.ContentSecurityPolicy = Policy;
        if (headers.ContentType.ToString() is var type && IsText(type))
            headers.ContentType = $"{type}; charset=utf-8"; // all that the program has is
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        if (path.StartsWithSegments("/api"))
            headers.CacheControl = "no-store";
        else if (headers.CacheControl.Count == 0)
            headers.CacheControl = "no-cache"; // asked for again each time, sent only when it changed
    }

    private static bool IsText(string type) =>
        (type.StartsWith("text/", StringComparison.Ordinal) || type.EndsWith("+xml", StringComparison.Ordinal))
        && !type.Contains("charset", StringComparison.OrdinalIgnoreCase);
}
