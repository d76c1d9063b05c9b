namespace Tickover.Reports.Paper;

/// <summary>Lines to sign on, two side by side.</summary>
internal sealed record Signatures(IReadOnlyList<SignatureLine> Entries) : Block;
