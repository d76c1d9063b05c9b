namespace Tickover.Instruments.Logs;

/// <summary>What is known beforehand about a log.</summary>
public sealed record LogReadingSettings
{
    /// <summary>What the log is called; the file's name.</summary>
    public string Name { get; init; } = "log";

    /// <summary>Columns told; they go before everything found. An unknown column is a refusal.</summary>
    public IReadOnlyList<ColumnChoice> Columns { get; init; } = [];

    /// <summary>Layouts remembered; the one whose key fits is used.</summary>
    public IReadOnlyList<LogLayout> Layouts { get; init; } = [];

    /// <summary>Pressure of the air outside, Pa. Default: the standard atmosphere at sea level, 101 325 Pa (ISO 2533).</summary>
    public double BarometerPascals { get; init; } = 101_325;

    /// <summary>Stoichiometric ratio the logger multiplied λ by; 14.7 unless told (trade practice).</summary>
    public double AssumedStoichiometry { get; init; } = LogUnits.UsualStoichiometry;

    /// <summary>Speed of peak power, rpm; helps to see a speed that is doubled or halved. Null where the car is not known.</summary>
    public double? PeakPowerRpm { get; init; }

    /// <summary>Rows a second, for a file without a time column; null where it has one.</summary>
    public double? RowsPerSecond { get; init; }

    /// <summary>Part of the file to take, from 1, where it consists of several; null for the whole.</summary>
    public int? Part { get; init; }

    /// <summary>Most rows kept in memory, 1 000 or more; beyond, neighbours are averaged in pairs. Two million rows of ten channels are 96 MB.</summary>
    public int MostRows { get; init; } = 2_000_000;
}
