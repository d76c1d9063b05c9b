namespace Tickover.Reports.Paper;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Over it.</param>
internal sealed record Column(string Heading)
{
    /// <summary>Whether it holds figures, which stand at the right.</summary>
    internal bool Figures { get; init; }

    internal static Column OfFigures(string heading) => new(heading) { Figures = true };
}
