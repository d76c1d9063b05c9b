namespace Tickover.Reports.Charts;

/// <summary>A part of a drawing that can be chosen.</summary>
/// <param name="Key">Key of the figure it stands for, such as <c>barrel.mainJet</c>.</param>
/// <param name="Name">What a screen reader says.</param>
/// <param name="Address">Where choosing it leads; null where the page's own script listens.</param>
/// <param name="Selected">Whether it is the one chosen.</param>
internal sealed record PartMark(string Key, string Name, string? Address, bool Selected)
{
    /// <summary>Whether it is a stop for the keyboard; a second shape of the same part is not.</summary>
    internal bool Focusable { get; init; } = true;
}
