namespace Tickover.Workshop.Balance.Documents;

/// <summary>One barrel's reading as it is written.</summary>
internal sealed record WrittenReading
{
    public int? Barrel { get; init; }

    /// <summary>kg/h.</summary>
    public double? Air { get; init; }

    /// <summary>kPa.</summary>
    public double? Vacuum { get; init; }

    public double? Lambda { get; init; }

    /// <summary>°C.</summary>
    public double? Header { get; init; }

    public double? Rpm { get; init; }
}
