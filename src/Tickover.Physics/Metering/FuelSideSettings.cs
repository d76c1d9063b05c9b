namespace Tickover.Physics.Metering;

/// <summary>How the fuel side is solved.</summary>
public sealed record FuelSideSettings
{
    /// <summary>Steps of the metering in a cycle, 90 or more; 360 for an answer, 120 where thousands of sets are only compared.</summary>
    public int StepsPerCycle { get; init; } = 360;

    /// <summary>Workers that share the grid; the answer does not depend on it.</summary>
    public int Workers { get; init; } = 2;

    /// <summary>What the depression in the auxiliary venturi is multiplied by, above zero: a calibration's, else 1.</summary>
    public double DepressionFactor { get; init; } = 1;
}
