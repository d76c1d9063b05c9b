namespace Tickover.Reports.Paper;

/// <summary>A line to sign on.</summary>
/// <param name="For">For whom or what.</param>
/// <param name="Signed">Who signed and when, where that is in the record; else empty, and the line is blank.</param>
internal sealed record SignatureLine(string For, string Signed);
