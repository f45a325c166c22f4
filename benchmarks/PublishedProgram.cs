using System.Diagnostics;

namespace Witnessmark.Benchmarks;

/// <summary>The program as people get it: published into a folder of its own, serving the demo shop, gone afterwards.</summary>
internal sealed class PublishedProgram : IAsyncDisposable
{
    private const string Port = "38437";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("witnessmark-measured-");
    private Process? server;

    public static string Address => $"http://localhost:{Port}/";

    /// <summary>What the server holds in memory now.</summary>
    public double Megabytes
    {
        get
        {
            server!.Refresh();
            return server.WorkingSet64 / 1e6;
        }
    }

    /// <summary>
    /// Publishes, or takes the folder in <c>WITNESSMARK_PUBLISHED</c>, starts, and waits until it answers. To be started at the root of the
    /// repository.
    /// </summary>
    public static async Task<PublishedProgram> Start()
    {
        var program = new PublishedProgram();
        var given = Environment.GetEnvironmentVariable("WITNESSMARK_PUBLISHED");
        var place = given ?? Path.Combine(program.folder.FullName, "program");
        if (given is null)
        {
            using var publish = Run("publish", "src/Witnessmark", "-c", "Release", "-o", place, "--verbosity", "quiet");
            await publish.WaitForExitAsync();
            if (publish.ExitCode != 0)
                throw new InvalidOperationException($"dotnet publish ended with {publish.ExitCode}.");
        }
        var data = Path.Combine(program.folder.FullName, "data");
        program.server = Run(
            Path.Combine(place, "witnessmark.dll"),
            "serve",
            "--demo",
            "--data",
            data,
            "--urls",
            Address
        );
        using var http = new HttpClient();
        for (var from = Stopwatch.GetTimestamp(); !await Answers(http); await Task.Delay(200))
            if (Stopwatch.GetElapsedTime(from) > Patience)
                throw new TimeoutException("The server does not answer.");
        return program;
    }

    public async ValueTask DisposeAsync()
    {
        if (server is not null)
        {
            server.Kill();
            await server.WaitForExitAsync();
            server.Dispose();
        }
        folder.Delete(recursive: true);
    }

    private static Process Run(params string[] arguments) => Process.Start("dotnet", arguments);

    private static async Task<bool> Answers(HttpClient http)
    {
        try
        {
            return (await http.GetAsync($"{Address}api/health")).IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
