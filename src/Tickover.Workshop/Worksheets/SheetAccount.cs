namespace Tickover.Workshop.Worksheets;

/// <summary>What a worksheet comes to, for the visit and the owner.</summary>
/// <param name="Heading">In a line.</param>
/// <param name="Sentences">Why, and what else it says; a few sentences.</param>
/// <param name="IsNo">Whether something must not stay as it is.</param>
public sealed record SheetAccount(string Heading, IReadOnlyList<string> Sentences, bool IsNo);
