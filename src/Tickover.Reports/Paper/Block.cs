namespace Tickover.Reports.Paper;

/// <summary>A piece of a document that stands below what came before it.</summary>
internal abstract record Block;
