using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Browser.Tests;

/// <summary>A shop of its own: the published server with the demo shop in a fresh data folder.</summary>
public sealed class RunningShop(string program) : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly string data = Directory.CreateTempSubdirectory("witnessmark-shop-").FullName;
    private readonly int port = FreePort();
    private readonly int https = FreePort();
    private Process? server;

    /// <summary>Its data folder.</summary>
    public string Data => data;

    public string Address => $"http://localhost:{port}/";

    /// <summary>Name that its certificate is for; null: it has none and serves this computer alone.</summary>
    public string? Name { get; private set; }

    /// <summary>Where devices come to that know it by its name.</summary>
    public string Secure => $"https://{Name ?? "localhost"}:{https}/";

    /// <summary>A certificate (PEM with its key) that somebody else makes and renews; null: none.</summary>
    public string? Certificate { get; private set; }

    /// <summary>Starts one.</summary>
    /// <param name="published">The program.</param>
    /// <param name="without">Key of a figure that the shop's sheet does not have, or null.</param>
    /// <param name="setting">A line more in its <c>[workshop]</c>, or null.</param>
    /// <param name="name">A name that it makes a certificate for, and serves with HTTPS; or null.</param>
    /// <param name="certificate">A certificate for this computer, with which it serves HTTPS beside HTTP; or null.</param>
    public static async Task<RunningShop> Start(
        Published published,
        string? without = null,
        string? setting = null,
        string? name = null,
        string? certificate = null
    )
    {
        var shop = new RunningShop(published.Folder) { Name = name, Certificate = certificate };
        if (name is not null)
            await shop.Run("certificate", "make", "--for", name);
        if ((without ?? setting) is not null)
            shop.Fill();
        if (without is not null)
            shop.Change("sheets/fell-640.toml", $"[figures.\"{without}\"]", "[figures.\"own.number\"]");
        if (setting is not null)
            shop.Change("shop.toml", "[workshop]", $"[workshop]\n{setting}");
        await shop.Start();
        return shop;
    }

    public async Task Start()
    {
        string[] ports = (Name ?? Certificate) is null
            ? ["--urls", Address]
            : ["--port", $"{port}", "--https", $"{https}"];
        string[] shown = Certificate is null ? [] : ["--certificate", Certificate];
        server = Process.Start(
            new ProcessStartInfo(
                "dotnet",
                [Path.Combine(program, "witnessmark.dll"), "serve", "--demo", "--data", data, .. ports, .. shown]
            )
            {
                RedirectStandardOutput = true,
            }
        )!;
        using var http = new HttpClient();
        var until = DateTime.UtcNow + Patience;
        while (!await Answers(http))
        {
            if (server.HasExited || DateTime.UtcNow > until)
                throw new InvalidOperationException("The server does not answer.");
            await Task.Delay(200);
        }
    }

    /// <summary>Ends the server as a power cut would.</summary>
    public async Task Stop()
    {
        if (server is null)
            return;
        server.Kill();
        await server.WaitForExitAsync();
        server.Dispose();
        server = null;
    }

    /// <summary>Goes on with another version of the program, in another folder.</summary>
    public async Task Upgrade(string newer)
    {
        await Stop();
        program = newer;
        await Start();
    }

    /// <summary>As if everybody who is signed in had done so six minutes ago, with as many deeds since.</summary>
    public void AgeSessions()
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(data, "door.db")};Pooling=false");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "UPDATE session SET started = started - 360000";
        Assert.NotEqual(0, command.ExecuteNonQuery());
    }

    /// <summary>The disk takes nothing of a sheet's next revision (Linux man-pages, full(4)), until there is room again.</summary>
    public void FullFor(string sheet) => File.CreateSymbolicLink(BesideSheet(sheet), "/dev/full");

    /// <summary>Room again.</summary>
    public void RoomFor(string sheet) => File.Delete(BesideSheet(sheet));

    private string BesideSheet(string sheet) => Path.Combine(data, "sheets", $"{sheet}.toml.new");

    /// <summary>How many entries the shop has.</summary>
    public async Task<IReadOnlyList<string>> EntryIds()
    {
        using var http = new HttpClient();
        using var reply = System.Text.Json.JsonDocument.Parse(
            await http.GetStringAsync($"{Address}api/entries?after=0")
        );
        return
        [
            .. reply
                .RootElement.GetProperty("entries")
                .EnumerateArray()
                .Select(e => e.GetProperty("entry").GetProperty("id").GetString()!),
        ];
    }

    /// <summary>How <c>witnessmark verify</c> ends over its ledger: 0 when every chain is intact.</summary>
    public async Task<int> Verify() => (await Verified()).Exit;

    /// <summary>The same, and what it says.</summary>
    public async Task<(int Exit, string Says)> Verified()
    {
        using var verify = Process.Start(
            new ProcessStartInfo("dotnet")
            {
                ArgumentList = { Path.Combine(program, "witnessmark.dll"), "verify", "--data", data },
                RedirectStandardOutput = true,
            }
        )!;
        var says = await verify.StandardOutput.ReadToEndAsync();
        await verify.WaitForExitAsync();
        return (verify.ExitCode, says.Trim());
    }

    /// <summary>Takes a list of machines into the shop's register.</summary>
    public async Task Import(byte[] list)
    {
        var file = Path.Combine(data, "list.csv");
        await File.WriteAllBytesAsync(file, list);
        await Run("machines", "import", file);
    }

    /// <summary>Puts something on the shop's shelf; from then on somebody keeps count of it.</summary>
    public async Task Receive(string item, string amount)
    {
        using var http = new HttpClient();
        using var body = new StringContent(
            $$"""{"id":"{{item}}-1","kind":"receive","item":"{{item}}","amount":"{{amount}}","by":"Ines Tallow"}""",
            System.Text.Encoding.UTF8,
            "application/json"
        );
        using var answer = await http.PostAsync($"{Address}api/stock/moves", body);
        answer.EnsureSuccessStatusCode();
    }

    /// <summary>Writes visits of the shop's first machine, as another device would have sent them.</summary>
    public async Task Visits(int count) => await Post(PastVisits.Batches(count));

    /// <summary>Takes batches in, as devices send them.</summary>
    public async Task Post(IEnumerable<string> batches)
    {
        using var http = new HttpClient();
        foreach (var batch in batches)
        {
            using var body = new StringContent(batch, System.Text.Encoding.UTF8, "application/json");
            using var answer = await http.PostAsync($"{Address}api/entries", body);
            answer.EnsureSuccessStatusCode();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Stop();
        Directory.Delete(data, recursive: true);
    }

    private async Task Run(params string[] command)
    {
        using var run = Process.Start(
            new ProcessStartInfo("dotnet", [Path.Combine(program, "witnessmark.dll"), .. command, "--data", data])
            {
                RedirectStandardOutput = true,
            }
        )!;
        await run.WaitForExitAsync();
        Assert.Equal(0, run.ExitCode);
    }

    private void Fill()
    {
        File.WriteAllText(Path.Combine(data, "demo"), "");
        Copy("book", "book");
        Copy(Path.Combine("demo", "sheets"), "sheets");
        File.Copy(Path.Combine(program, "demo", "shop.toml"), Path.Combine(data, "shop.toml"));
    }

    private void Change(string name, string old, string with)
    {
        var path = Path.Combine(data, name);
        var text = File.ReadAllText(path);
        Assert.Contains(old, text);
        File.WriteAllText(path, text.Replace(old, with));
    }

    private void Copy(string from, string to)
    {
        Directory.CreateDirectory(Path.Combine(data, to));
        foreach (var file in Directory.GetFiles(Path.Combine(program, from), "*.toml"))
            File.Copy(file, Path.Combine(data, to, Path.GetFileName(file)));
    }

    private async Task<bool> Answers(HttpClient http)
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

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
