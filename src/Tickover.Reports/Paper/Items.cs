namespace Tickover.Reports.Paper;

/// <summary>A list of points.</summary>
/// <param name="Entries">The points.</param>
internal sealed record Items(IReadOnlyList<Prose> Entries) : Block
{
    /// <summary>Whether the points are counted because their order matters.</summary>
    internal bool Numbered { get; init; }
}
