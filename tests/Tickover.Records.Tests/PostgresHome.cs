using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;
using Tickover.Records.Tests;

[assembly: AssemblyFixture(typeof(PostgresHome))]

namespace Tickover.Records.Tests;

/// <summary>Records in a PostgreSQL server that is started for the tests and stopped after them.</summary>
/// <remarks>Uses the server named in TICKOVER_POSTGRES where that is set, else Debian's own programs.</remarks>
public sealed class PostgresHome : RecordHome, IAsyncDisposable
{
    private const string ServerFolder = "/usr/lib/postgresql";

    // Beside the other tests' folders: the server runs as somebody else, who cannot look into those.
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-postgres-").FullName;
    private string _admin = Environment.GetEnvironmentVariable("TICKOVER_POSTGRES") ?? "";
    private readonly Lock _starting = new();
    private string? _programs;

    public override RecordPlace NewPlace()
    {
        lock (_starting)
        {
            Start();
        }

        var name = $"record_{Guid.NewGuid():N}";
        using var connection = new NpgsqlConnection(_admin);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = $"CREATE DATABASE {name}";
        command.ExecuteNonQuery();
        return new RecordPlace(NewFolder(), new NpgsqlConnectionStringBuilder(_admin) { Database = name, Pooling = true, MaxPoolSize = 20 }.ConnectionString);
    }

    public ValueTask DisposeAsync()
    {
        if (_programs is not null && _admin.Length > 0)
        {
            NpgsqlConnection.ClearAllPools();
            Run($"{_programs}/pg_ctl -D {Path.Combine(_folder, "data")} -m immediate -w stop >/dev/null", asPostgres: true);
        }

        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    // Only when a test asks for it: a run of one class on files starts no server.
    private void Start()
    {
        if (_admin.Length > 0)
        {
            return;
        }

        _programs = Directory.Exists(ServerFolder)
            ? Directory.EnumerateDirectories(ServerFolder).OrderDescending(StringComparer.Ordinal).Select(d => Path.Combine(d, "bin")).FirstOrDefault(d => File.Exists(Path.Combine(d, "pg_ctl")))
            : null;
        Assert.SkipWhen(_programs is null, "No PostgreSQL server programs here; test.sh installs them on Debian.");
        var port = FreePort();
        var data = Path.Combine(_folder, "data");
        Run($"mkdir -p {data} && chown -R postgres {_folder} 2>/dev/null; chmod 755 {_folder}", asPostgres: false);
        Run($"{_programs}/initdb -D {data} -A trust -U postgres --no-sync >/dev/null", asPostgres: true);
        Run($"{_programs}/pg_ctl -D {data} -o \"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={_folder}\" -l {_folder}/log -w start >/dev/null", asPostgres: true);
        _admin = string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={port};Username=postgres;Database=postgres");
    }

    // The server refuses to run as root, which is who runs the tests in a container.
    private static void Run(string script, bool asPostgres)
    {
        var command = asPostgres && string.Equals(Environment.UserName, "root", StringComparison.Ordinal)
            ? new ProcessStartInfo("su", ["postgres", "-s", "/bin/sh", "-c", script])
            : new ProcessStartInfo("sh", ["-c", script]);
        command.WorkingDirectory = "/";
        using var process = Process.Start(command)!;
        process.WaitForExit();
        Assert.True(process.ExitCode == 0 || !asPostgres, $"'{script}' ended with {process.ExitCode}.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
