namespace Tickover.Reports.Paper;

/// <summary>A table. Its head is repeated where it goes over a page.</summary>
/// <param name="Name">What it holds, for those who hear it read.</param>
/// <param name="Columns">Columns.</param>
/// <param name="Rows">Rows of as many cells as there are columns; the first cell names the row.</param>
internal sealed record Table(string Name, IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<Prose>> Rows) : Block
{
    /// <summary>Whether the name is printed above it.</summary>
    internal bool ShowsName { get; init; }

    /// <summary>Whether it is kept narrow, so that a few figures stand near their names.</summary>
    internal bool Narrow { get; init; }

    /// <summary>Whether it is set in small type: the long tables behind the words.</summary>
    internal bool Small { get; init; }
}
