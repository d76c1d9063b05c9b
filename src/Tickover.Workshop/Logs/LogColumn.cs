namespace Tickover.Workshop.Logs;

/// <summary>A column of a log's file, and what it was taken for.</summary>
public sealed record LogColumn
{
    /// <summary>Heading as the file has it; "#3" for the third column of a file without headings.</summary>
    public required string Name { get; init; }

    /// <summary>Place in the row, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>What it was taken for, as the command line writes it: "rpm", "lambda@2", "ignored".</summary>
    public required string Taken { get; init; }

    /// <summary>Its unit, such as "kPa abs"; empty where none was found or none is needed.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Whether a person said so, now or for an earlier file with the same headings.</summary>
    public bool IsTold { get; init; }

    /// <summary>How sure it is, in a word: told, sure, likely, guess.</summary>
    public string Sureness { get; init; } = "";

    /// <summary>Why, in plain words.</summary>
    public string Why { get; init; } = "";

    /// <summary>A few cells as they stand in the file, with commas between.</summary>
    public string Cells { get; init; } = "";

    /// <summary>Smallest figure seen, in the file's own unit; null without figures.</summary>
    public double? Least { get; init; }

    /// <summary>Largest figure seen, in the file's own unit; null without figures.</summary>
    public double? Most { get; init; }

    /// <summary>Whether it is used.</summary>
    public bool IsUsed => Taken is not "ignored";
}
