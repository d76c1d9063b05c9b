using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Tickover.Records.Opening;

/// <summary>Sets on every SQLite connection what is not kept in the file: each commit is forced to the disk, and a busy file is waited for.</summary>
/// <param name="patience">How long a busy file is waited for.</param>
internal sealed class EveryConnection(TimeSpan patience) : DbConnectionInterceptor
{
    private readonly string _settings = string.Create(CultureInfo.InvariantCulture, $"PRAGMA synchronous=FULL; PRAGMA busy_timeout={(long)patience.TotalMilliseconds};");

    /// <inheritdoc/>
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = _settings;
        command.ExecuteNonQuery();
    }

    /// <inheritdoc/>
    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        var command = connection.CreateCommand();
        await using (command.ConfigureAwait(false))
        {
            command.CommandText = _settings;
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
