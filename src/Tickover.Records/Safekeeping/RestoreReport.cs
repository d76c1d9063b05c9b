namespace Tickover.Records.Safekeeping;

/// <summary>A record that was put back from a backup.</summary>
/// <param name="Backup">What was put back.</param>
/// <param name="Aside">Where the record that it replaced lies now; null where there was none.</param>
/// <param name="WasAnother">Whether the folder belonged to another record before.</param>
public sealed record RestoreReport(BackupReport Backup, string? Aside, bool WasAnother);
