using Witnessmark.Languages;
using Witnessmark.Ledger;

namespace Witnessmark.Serve;

/// <summary>How a "no" looks: <c>{"error": "a sentence"}</c>, never the program's insides.</summary>
public static class Failure
{
    /// <summary>The answer to a program, in English.</summary>
    public static IResult Of(int status, string sentence) => Results.Json(new { Error = sentence }, statusCode: status);

    /// <summary>The answer to a person, in the language that the request asks for.</summary>
    public static IResult Said(int status, Sentence sentence) => new Spoken(status, sentence);

    /// <summary>The one place where a broken world ends: it is logged here, and the client is told to keep what it has.</summary>
    public static void UsePlainFailures(this WebApplication app) =>
        app.Use(
            async (context, next) =>
            {
                try
                {
                    await next(context);
                }
                catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
                {
                    // the client has gone; there is nobody to tell
                }
                catch (Exception broken) when (!context.Response.HasStarted)
                {
                    app.Logger.LogError(broken, "{Method} {Path}", context.Request.Method, context.Request.Path);
                    await Answer(broken).ExecuteAsync(context);
                }
            }
        );

    private static IResult Answer(Exception broken) =>
        broken switch
        {
            BadHttpRequestException { StatusCode: 413 } => Said(413, $"That is too much at once."),
            BadHttpRequestException bad => Said(bad.StatusCode, $"The request cannot be read."),
            Exception when DiskFull.Is(broken) => Said(
                507,
                $"The shop's disk is full. Nothing of this was taken in: keep it and send it again when there is room."
            ),
            LedgerUnavailable or IOException => Said(
                503,
                $"The shop cannot write or read just now. Nothing of this was taken in: keep it and send it again."
            ),
            _ => Said(
                500,
                $"The shop's program met a fault. Nothing of this was confirmed: keep it and send it again."
            ),
        };

    private sealed class Spoken(int status, Sentence sentence) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext) =>
            Of(status, sentence.In(AskedTongue.Of(httpContext.Request))).ExecuteAsync(httpContext);
    }
}
