using Microsoft.EntityFrameworkCore;

namespace Tickover.Records.Model;

/// <summary>A record in a PostgreSQL database.</summary>
/// <param name="options">Which database.</param>
internal sealed class PostgresRecords(DbContextOptions<PostgresRecords> options) : RecordsContext(options);
