using System.Data;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Tickover.Records.Model;

namespace Tickover.Records.Carrying;

/// <summary>Begins a reading that sees the record as it is at one moment, while others go on writing.</summary>
internal static class Snapshot
{
    /// <summary>Begins.</summary>
    public static async Task<IDbContextTransaction> BeginAsync(RecordsContext context, CancellationToken cancellation)
    {
        if (context.Database.GetDbConnection() is not SqliteConnection file)
        {
            return await context.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancellation);
        }

        // Deferred: it takes the readers' view at its first question and never the writers' place.
        await context.Database.OpenConnectionAsync(cancellation);
        return (await context.Database.UseTransactionAsync(file.BeginTransaction(deferred: true), cancellation))!;
    }
}
