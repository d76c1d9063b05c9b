namespace Tickover.Records.Safekeeping;

/// <summary>A backup that was made, or put back, and looked through.</summary>
/// <param name="File">The file.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Record">Which record.</param>
/// <param name="Print">What it holds.</param>
/// <param name="Pictures">Pictures in it, each compared with its hash.</param>
public sealed record BackupReport(string File, long Bytes, Guid Record, RecordPrint Print, int Pictures);
