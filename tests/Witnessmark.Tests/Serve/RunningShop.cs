using System.Diagnostics;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Serve;

/// <summary>The program, serving a folder on a free port in a process of its own.</summary>
internal sealed partial class RunningShop : IDisposable
{
    private readonly Process _process;

    private readonly StringBuilder _said = new();

    private RunningShop(Process process, Uri address)
    {
        _process = process;
        _ = Task.Run(() => Listen(process.StandardOutput)); // or it would stand still when the pipe is full
        Client = new() { BaseAddress = address, Timeout = TimeSpan.FromSeconds(60) };
    }

    public HttpClient Client { get; }

    /// <summary>What it wrote since it listens.</summary>
    public string Said
    {
        get
        {
            lock (_said)
                return _said.ToString();
        }
    }

    public static Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(ProgramFile.Path);
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }

    public static RunningShop Serve(string folder) => Serve("--demo", "--data", folder);

    public static RunningShop Serve(params string[] arguments)
    {
        var process = Start(["serve", "--port", "0", .. arguments]);
        var errors = process.StandardError.ReadToEndAsync();
        var said = new StringBuilder();
        while (process.StandardOutput.ReadLine() is { } line)
        {
            said.AppendLine(line);
            if (Address().Match(line) is { Success: true } address)
                return new(process, new(address.Value));
        }
        throw new InvalidOperationException($"It did not start: {said}{errors.Result}");
    }

    private void Listen(StreamReader output)
    {
        while (output.ReadLine() is { } line)
            lock (_said)
                _said.AppendLine(line);
    }

    /// <summary>Ends the process at once, as a power cut would.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <summary>Asks it to stop, as a service's keeper would; whether it did within a time.</summary>
    public async Task<bool> StopsWithin(TimeSpan time)
    {
        using var ask = Process.Start("kill", $"-TERM {_process.Id}");
        using var enough = new CancellationTokenSource(time);
        try
        {
            await _process.WaitForExitAsync(enough.Token);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    public Task<HttpResponseMessage> Post(params IEnumerable<Entry> entries) => PostAs("bench", entries);

    public async Task<HttpResponseMessage> PostAs(string device, IEnumerable<Entry> entries) =>
        await Client.PostAsync(
            "/api/entries",
            JsonContent.Create(
                new
                {
                    protocol = 1,
                    device,
                    epoch = 1,
                    entries = entries.Select(EntryJson.Write),
                }
            )
        );

    public async Task<JsonElement> Get(string path) => await Client.GetFromJsonAsync<JsonElement>(path);

    /// <summary>Ids in the shop's order.</summary>
    public async Task<IReadOnlyList<string>> Ids()
    {
        var ids = new List<string>();
        while (true)
        {
            var page = await Get($"/api/entries?after={ids.Count}");
            ids.AddRange(
                page.GetProperty("entries")
                    .EnumerateArray()
                    .Select(e => e.GetProperty("entry").GetProperty("id").GetString()!)
            );
            if (ids.Count >= page.GetProperty("head").GetInt32())
                return ids;
        }
    }

    public void Dispose()
    {
        Client.Dispose();
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+")]
    private static partial Regex Address();
}
