using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace Witnessmark.Serve;

/// <summary>
/// The two large answers go out compressed: the files of the workbench and the entries. Over HTTPS too: neither repeats what was asked beside a secret,
/// which is what lengths could give away (BREACH, CVE-2013-3587); sessions are in cookies, and no other answer is compressed.
/// </summary>
public static class Compression
{
    private static readonly PathString[] Large = ["/api/workbench", "/api/entries"];

    /// <summary>How it is done.</summary>
    public static void AddCompression(this IServiceCollection services) =>
        services
            .AddResponseCompression(options => options.EnableForHttps = true)
            .Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Optimal);

    /// <summary>Compresses those answers where the browser takes it.</summary>
    public static void UseCompression(this WebApplication app) =>
        app.UseWhen(
            context => HttpMethods.IsGet(context.Request.Method) && Large.Contains(context.Request.Path),
            large => large.UseResponseCompression()
        );
}
