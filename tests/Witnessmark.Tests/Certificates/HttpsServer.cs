using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>The program as built, with its listening open on free ports.</summary>
internal sealed partial class HttpsServer : IDisposable
{
    private readonly Process process;

    private HttpsServer(Process process, int plain, int https, string said)
    {
        this.process = process;
        (Plain, Https, Said) = (new($"http://localhost:{plain}"), new($"https://localhost:{https}"), said);
    }

    public Uri Plain { get; }

    public Uri Https { get; }

    /// <summary>What it said when it had started.</summary>
    public string Said { get; }

    public static HttpsServer Serve(string folder, params string[] options)
    {
        var process = RunningShop.Start(["serve", "--demo", "--port", "0", "--data", folder, .. options]);
        var errors = process.StandardError.ReadToEndAsync();
        var said = new StringBuilder();
        while (process.StandardOutput.ReadLine() is { } line)
        {
            said.AppendLine(line);
            if (line.StartsWith("Ctrl+C", StringComparison.Ordinal))
                return new(process, Port(PlainPort(), said), Port(HttpsPort(), said), said.ToString());
        }
        throw new InvalidOperationException($"It did not start: {said}{errors.Result}");
    }

    public void Dispose()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    private static int Port(Regex pattern, StringBuilder said) =>
        int.Parse(pattern.Match(said.ToString()).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"http://localhost:(\d+)")]
    private static partial Regex PlainPort();

    [GeneratedRegex(@"https://[^:]+:(\d+)")]
    private static partial Regex HttpsPort();
}
