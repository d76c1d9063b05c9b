namespace Tickover.Instruments.Logs;

/// <summary>How far the reading of a log is.</summary>
/// <param name="BytesRead">Bytes read.</param>
/// <param name="Rows">Rows seen.</param>
public readonly record struct LogProgress(long BytesRead, long Rows);
