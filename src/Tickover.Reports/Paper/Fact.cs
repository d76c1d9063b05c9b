namespace Tickover.Reports.Paper;

/// <summary>A name and what it stands for.</summary>
internal sealed record Fact(string Name, Prose Value);
