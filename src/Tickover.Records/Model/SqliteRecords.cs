using Microsoft.EntityFrameworkCore;

namespace Tickover.Records.Model;

/// <summary>A record in an SQLite file.</summary>
/// <param name="options">Which file.</param>
internal sealed class SqliteRecords(DbContextOptions<SqliteRecords> options) : RecordsContext(options);
