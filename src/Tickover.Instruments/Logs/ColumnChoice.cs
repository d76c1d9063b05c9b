namespace Tickover.Instruments.Logs;

/// <summary>What one column of a log was taken for.</summary>
public sealed record ColumnChoice
{
    /// <summary>Heading as the file has it; "#3" for the third column of a file without headings.</summary>
    public required string Column { get; init; }

    /// <summary>Place in the row, from 0; negative where it is told by its heading only.</summary>
    public int Index { get; init; } = -1;

    /// <summary>What it holds.</summary>
    public required LogQuantity Quantity { get; init; }

    /// <summary>Its unit; null where it is still to be found from the figures.</summary>
    public LogUnit? Unit { get; init; }

    /// <summary>Bank from 1; null for all, or where it makes no difference.</summary>
    public int? Bank { get; init; }

    /// <summary>How sure that is.</summary>
    public HowSure Sureness { get; init; }

    /// <summary>Why, in plain words.</summary>
    public string Why { get; init; } = string.Empty;

    /// <summary>A few cells as they stand in the file, with semicolons between.</summary>
    public string Seen { get; init; } = string.Empty;

    /// <summary>Smallest figure seen, as the file has it: of the whole file where the column is used, else of its first rows; null without figures.</summary>
    public double? Least { get; init; }

    /// <summary>Largest figure seen, likewise.</summary>
    public double? Most { get; init; }
}
