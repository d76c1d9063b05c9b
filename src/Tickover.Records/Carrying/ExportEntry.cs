namespace Tickover.Records.Carrying;

/// <summary>An entry of an export.</summary>
/// <param name="Bytes">Its size as written out.</param>
/// <param name="Sha256">Its SHA-256 in small hexadecimal letters.</param>
public sealed record ExportEntry(long Bytes, string Sha256);
