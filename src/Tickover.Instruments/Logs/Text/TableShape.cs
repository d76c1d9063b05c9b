namespace Tickover.Instruments.Logs.Text;

/// <summary>Where in a text the table is, and how it is written.</summary>
internal sealed record TableShape
{
    /// <summary>Between cells.</summary>
    public required char Separator { get; init; }

    /// <summary>Decimal mark.</summary>
    public required char Mark { get; init; }

    /// <summary>Row of the headings from 0; negative where there are none.</summary>
    public required int HeadingRow { get; init; }

    /// <summary>Row of the units from 0; negative where there are none.</summary>
    public required int UnitsRow { get; init; }

    /// <summary>First row of figures from 0.</summary>
    public required int FirstRow { get; init; }

    /// <summary>The headings; "#1" and so on where there are none.</summary>
    public required IReadOnlyList<string> Headings { get; init; }

    /// <summary>The units row, as long as the headings; empty texts where there is none.</summary>
    public required IReadOnlyList<string> Units { get; init; }

    /// <summary>The first rows of figures.</summary>
    public required IReadOnlyList<string[]> Sample { get; init; }

    /// <summary>Cells of most rows of figures.</summary>
    public required int Width { get; init; }
}
