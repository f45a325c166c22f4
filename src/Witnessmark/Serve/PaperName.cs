using Microsoft.Net.Http.Headers;

namespace Witnessmark.Serve;

/// <summary>What a paper is called when it is kept: by its job, so that one is not taken for another's.</summary>
/// <remarks><b>Source.</b> RFC 6266, 4.1 and 4.3: the disposition <c>inline</c> with a file name; the browser shows it all the same.</remarks>
internal static class PaperName
{
    private const int LongestJob = 60;

    /// <summary>The address gives out this paper of its job: the end of its name is the address's own.</summary>
    public static RouteHandlerBuilder NamedByJob(this RouteHandlerBuilder endpoint) =>
        endpoint.AddEndpointFilter(
            (context, next) =>
            {
                var http = context.HttpContext;
                http.Response.OnStarting(() =>
                {
                    if (http.Response.StatusCode == StatusCodes.Status200OK)
                        http.Response.Headers.ContentDisposition = Of(http.Request);
                    return Task.CompletedTask;
                });
                return next(context);
            }
        );

    // a job's number is what anybody wrote: of its signs only letters and digits stand in the name
    private static string Of(HttpRequest request)
    {
        var job = $"{request.RouteValues["job"]}".Take(LongestJob).Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-');
        var paper = Path.GetFileName(request.Path.Value);
        return new ContentDispositionHeaderValue("inline")
        {
            FileName = $"job-{string.Concat(job)}-{paper}",
        }.ToString();
    }
}
