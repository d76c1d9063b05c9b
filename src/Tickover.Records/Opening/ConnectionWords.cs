using Npgsql;

namespace Tickover.Records.Opening;

/// <summary>Says which database a connection string means, without its password.</summary>
internal static class ConnectionWords
{
    /// <summary>The words.</summary>
    public static string Of(string connectionString)
    {
        try
        {
            var parts = new NpgsqlConnectionStringBuilder(connectionString);
            return $"PostgreSQL database {parts.Database} on {parts.Host}";
        }
        catch (ArgumentException)
        {
            return "a PostgreSQL database";
        }
    }
}
