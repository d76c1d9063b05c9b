namespace Tickover.Reports.Paper;

/// <summary>The head of the first page: title and what it is at the left, who and when at the right.</summary>
/// <param name="Title">Heading of level 1.</param>
/// <param name="Below">One line below it.</param>
/// <param name="Beside">Lines at the right, the first one bold.</param>
internal sealed record Masthead(string Title, string Below, IReadOnlyList<string> Beside) : Block;
