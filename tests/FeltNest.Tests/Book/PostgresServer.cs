using System.Diagnostics;
using System.Globalization;
using FeltNest.Tests.Cli.Faults;
using Npgsql;

namespace FeltNest.Tests.Book;

/// <summary>A PostgreSQL server of Debian's package in a folder of its own, reached by a socket there alone: nothing listens on the
/// network. It is started when a test first asks, and stopped when the process ends.</summary>
internal sealed class PostgresServer
{
    private static readonly Lazy<PostgresServer> Started = new(() => new PostgresServer());
    private static int schemas;

    private readonly string folder = Directory.CreateTempSubdirectory("feltnest-pg-").FullName;

    private PostgresServer()
    {
        Root($"chmod 755 {folder}", folder);
        string programs = Programs!;
        string data = Path.Combine(folder, "pg");
        Directory.CreateDirectory(data);
        if (IsRoot)
        {
            Root($"chown -R postgres {folder}", folder);
        }

        Server($"{programs}/initdb -D {data} -A trust -U postgres --no-sync > {folder}/init.log 2>&1");
        Server($"{programs}/pg_ctl -D {data} -l {folder}/pg.log -o '-k {folder} -c listen_addresses=' -w start > {folder}/start.log 2>&1");
        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
        {
            Server($"{programs}/pg_ctl -D {data} -m immediate stop > /dev/null 2>&1");
            Root($"rm -rf {folder}", "/");
        };
    }

    /// <summary>True where the package is installed.</summary>
    public static bool IsInstalled => Programs is not null;

    private static bool IsRoot => Environment.UserName == "root";

    private static string? Programs => Directory.Exists("/usr/lib/postgresql")
        ? Directory.GetDirectories("/usr/lib/postgresql").Select(version => Path.Combine(version, "bin"))
            .FirstOrDefault(bin => File.Exists(Path.Combine(bin, "initdb")))
        : null;

    /// <summary>A connection string for a schema that is new and empty.</summary>
    public static string NewSchema()
    {
        string schema = string.Create(CultureInfo.InvariantCulture, $"room{Interlocked.Increment(ref schemas)}");
        string server = $"Host={Started.Value.folder};Username=postgres;Database=postgres";
        using NpgsqlConnection connection = new($"{server};Pooling=false");
        connection.Open();
        using NpgsqlCommand command = new($"CREATE SCHEMA {schema}", connection);
        command.ExecuteNonQuery();
        return $"{server};Search Path={schema}";
    }

    // A server never runs as root.
    private void Server(string command)
    {
        if (IsRoot)
        {
            Ended(ProgramProcess.StartTool("su", ["postgres", "-c", $"cd {folder}; {command}"]));
        }
        else
        {
            Root(command, folder);
        }
    }

    private static void Root(string command, string at) => Ended(ProgramProcess.StartTool("sh", ["-c", $"cd {at}; {command}"]));

    private static void Ended(Process process)
    {
        using (process)
        {
            process.WaitForExit();
        }
    }
}
