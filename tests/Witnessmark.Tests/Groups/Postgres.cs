using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Witnessmark.Tests.Groups;

/// <summary>A real PostgreSQL of Debian's package in a folder of its own, with its own port. It refuses to run as root, and runs as the user that the package made.</summary>
internal sealed class Postgres : IDisposable
{
    private const string Kill9 = "-KILL";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private static readonly string Programs = Directory
        .GetDirectories("/usr/lib/postgresql")
        .Select(version => Path.Combine(version, "bin"))
        .Where(bin => File.Exists(Path.Combine(bin, "initdb")))
        .Max(StringComparer.Ordinal)!;

    private readonly string folder;
    private Process? process;

    private Postgres(string folder) => (this.folder, Port) = (folder, FreePort());

    public int Port { get; }

    /// <summary>Of somebody who may do everything, as at the store's own computer.</summary>
    public string Admin => $"Host={folder};Port={Port};Username=postgres;Database=postgres;No Reset On Close=true";

    private string Data => Path.Combine(folder, "data");

    /// <summary>A new one that runs.</summary>
    public static Postgres Started()
    {
        var made = new Postgres(Folder());
        RunAlone(
            "initdb",
            "-D",
            made.Data,
            "-U",
            "postgres",
            "--auth-local=trust",
            "--auth-host=scram-sha-256",
            "--no-sync",
            "-E",
            "UTF8",
            "--locale=C.UTF-8"
        );
        File.AppendAllText(
            Path.Combine(made.Data, "postgresql.conf"),
            "\nshared_buffers = 16MB\nmax_connections = 60\nlisten_addresses = '127.0.0.1'\nwal_retrieve_retry_interval = 200ms\n"
        );
        made.Start();
        return made;
    }

    /// <summary>A standby of this one that follows it; not waited for until <see cref="WaitFor"/>.</summary>
    public Postgres Follower(string name)
    {
        var standby = new Postgres(Folder());
        RunAlone(
            "pg_basebackup",
            "-D",
            standby.Data,
            "-d",
            $"host={folder} port={Port} user=postgres application_name={name}",
            "-R",
            "-c",
            "fast",
            "--no-sync"
        );
        standby.Start();
        return standby;
    }

    /// <summary>From now on nothing counts as committed before the standby of that name has it on its disk.</summary>
    public void WaitFor(string name)
    {
        Sql($"ALTER SYSTEM SET synchronous_standby_names = '{name}'");
        Sql("SELECT pg_reload_conf()");
        Until(() =>
            Value($"SELECT count(*) FROM pg_stat_replication WHERE sync_state = 'sync' AND application_name = '{name}'")
            == "1"
        );
    }

    public void Start(params string[] settings)
    {
        process = Process.Start(
            AsItsUser(
                "postgres",
                ["-D", Data, "-p", $"{Port}", "-k", folder, .. settings.SelectMany(s => new[] { "-c", s })]
            )
        )!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, said) => File.AppendAllText(Path.Combine(folder, "said"), said.Data + "\n");
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        Until(IsUp);
    }

    /// <summary>SIGKILL to it and all its processes: nothing of it writes any more.</summary>
    public void Kill()
    {
        foreach (var id in (int[])[process!.Id, .. Children()])
            Signal(id, Kill9);
        process.WaitForExit();
        process.Dispose();
        process = null;
    }

    /// <summary>What receives from the primary stands still, as a network would that swallows everything.</summary>
    public void StopReceiving() => Receiver("-STOP");

    /// <summary>It goes on.</summary>
    public void ReceiveAgain() => Receiver("-CONT");

    /// <summary>The standby is the primary from now on.</summary>
    public void Promote()
    {
        RunAlone("pg_ctl", "promote", "-D", Data, "-w");
        Until(() => Value("SELECT pg_is_in_recovery()") == "False");
    }

    public void Sql(string sql) => Value(sql);

    public string? Value(string sql, string database = "postgres")
    {
        using var connection = new NpgsqlConnection($"{Admin};Database={database}");
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection);
        return command.ExecuteScalar()?.ToString();
    }

    /// <summary>A file that it may write.</summary>
    public string In(string name) => Path.Combine(folder, name);

    /// <summary>Runs one of its programs at its socket.</summary>
    public void Run(string program, string[] arguments) =>
        RunAlone(program, ["-h", folder, "-p", $"{Port}", "-U", "postgres", .. arguments]);

    /// <summary>Waits for something to become true.</summary>
    public static void Until(Func<bool> reached)
    {
        var watch = Stopwatch.StartNew();
        while (!reached())
            if (watch.Elapsed > Patience)
                throw new TimeoutException("It did not happen.");
            else
                Thread.Sleep(50);
    }

    public void Dispose()
    {
        if (process is not null)
            Kill();
        NpgsqlConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private static string Folder()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-pg-").FullName;
        if (Environment.IsPrivilegedProcess)
            Process.Start("chown", ["postgres", folder]).WaitForExit();
        return folder;
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private bool IsUp()
    {
        if (process!.HasExited)
            throw new InvalidOperationException(File.ReadAllText(Path.Combine(folder, "said")));
        try
        {
            return Value("SELECT 1") == "1";
        }
        catch (NpgsqlException)
        {
            return false;
        }
    }

    private int[] Children() =>
        [
            .. File.ReadAllText($"/proc/{process!.Id}/task/{process.Id}/children")
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(id => int.Parse(id, System.Globalization.CultureInfo.InvariantCulture)),
        ];

    private void Receiver(string signal)
    {
        var receivers = Children()
            .Where(id => File.ReadAllText($"/proc/{id}/cmdline").Contains("walreceiver", StringComparison.Ordinal));
        Signal(receivers.Single(), signal);
    }

    private static void RunAlone(string program, params string[] arguments)
    {
        using var run = Process.Start(AsItsUser(program, arguments))!;
        var (output, errors) = (run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        run.WaitForExit();
        if (run.ExitCode != 0)
            throw new InvalidOperationException($"{program}: {output.Result}{errors.Result}");
    }

    private static ProcessStartInfo AsItsUser(string program, IEnumerable<string> arguments)
    {
        var path = Path.Combine(Programs, program);
        return Environment.IsPrivilegedProcess
            ? Redirected("setpriv", ["--reuid=postgres", "--regid=postgres", "--clear-groups", path, .. arguments])
            : Redirected(path, arguments);
    }

    private static ProcessStartInfo Redirected(string program, IEnumerable<string> arguments) =>
        new(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = "/",
        };

    private static void Signal(int id, string signal)
    {
        using var kill = Process.Start("kill", [signal, $"{id}"]);
        kill.WaitForExit();
    }
}
