using Tickover.Records;
using Tickover.Records.Safekeeping;

namespace Tickover.Web.Visits;

/// <summary>Makes the day's backup beside the record while the server runs: seven days and four weeks are kept.</summary>
/// <param name="store">The record.</param>
/// <param name="logger">Where a backup that could not be made is told.</param>
public sealed partial class DailyBackups(RecordStore store, ILogger<DailyBackups> logger) : BackgroundService
{
    /// <summary>Name of the folder inside the data folder; better copied to another disk as well.</summary>
    public const string Folder = "backups";

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        new BackupRota(store, Path.Combine(store.Place.DataFolder, Folder), Tell).RunAsync(stoppingToken);

    private void Tell(string words)
    {
        if (words.StartsWith("No backup", StringComparison.Ordinal))
        {
            LogNoBackup(logger, words);
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "{Words}")]
    private static partial void LogNoBackup(ILogger logger, string words);
}
