namespace Tickover.Workshop.Balance.Documents;

/// <summary>What the airflow meter is good to, one standard deviation.</summary>
internal sealed record WrittenMeter
{
    /// <summary>kg/h.</summary>
    public double? Air { get; init; }

    /// <summary>Part of the reading.</summary>
    public double? Part { get; init; }
}
