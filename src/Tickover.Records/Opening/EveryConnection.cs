using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Tickover.Records.Opening;

/// <summary>Sets on every SQLite connection what is not kept in the file: each commit is forced to the disk, and a busy file is waited for.</summary>
internal sealed class EveryConnection : DbConnectionInterceptor
{
    private const string Settings = "PRAGMA synchronous=FULL; PRAGMA busy_timeout=10000;";

    /// <inheritdoc/>
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }

    /// <inheritdoc/>
    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        var command = connection.CreateCommand();
        await using (command.ConfigureAwait(false))
        {
            command.CommandText = Settings;
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
