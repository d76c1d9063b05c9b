using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>Makes sure that a PostgreSQL database holds a record of ours.</summary>
internal static class DatabaseOpening
{
    /// <summary>Begins a record, or makes sure of the one that is there.</summary>
    /// <returns>Whether it was begun just now.</returns>
    public static async Task<bool> PrepareAsync(
        RecordPlace place, ContextFactory contexts, RecordNote? note, Beginning beginning, TimeProvider clock, CancellationToken cancellation)
    {
        await using var context = contexts.Make();
        var tables = await context.Database
            .SqlQuery<string>($"SELECT table_name AS \"Value\" FROM information_schema.tables WHERE table_schema = current_schema()")
            .ToListAsync(cancellation);
        if (tables.Contains("Stamps", StringComparer.Ordinal) && tables.Contains("__EFMigrationsHistory", StringComparer.Ordinal))
        {
            return false;
        }

        if (tables.Count > 0)
        {
            throw new RecordTroubleException($"{place.Words} belongs to another program: it has tables of its own ({tables[0]}, …). It is left as it is; name an empty database.");
        }

        if (note is not null || beginning == Beginning.Expected)
        {
            throw new RecordTroubleException($"{place.Words} is empty, although a record was expected there. Restore it by the database's own means, or begin a new one with an empty data folder.");
        }

        await using var alone = FolderLock.Take(place);
        await context.Database.MigrateAsync(cancellation);
        context.Stamps.Add(new StampRow { Record = Guid.CreateVersion7(), BegunAt = DateTimeOffset.FromUnixTimeMilliseconds(clock.GetUtcNow().ToUnixTimeMilliseconds()) });
        await context.SaveChangesAsync(cancellation);
        return true;
    }
}
