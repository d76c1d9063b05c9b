using Tickover.Physics.Flow;

namespace Tickover.Workshop.StripDown;

/// <summary>An engine at idle as one barrel sees it.</summary>
public sealed record IdlePoint
{
    /// <summary>Engine speed, rpm.</summary>
    public required double Rpm { get; init; }

    /// <summary>Air of one barrel, kg/s; above zero.</summary>
    public required double KilogramsPerSecond { get; init; }

    /// <summary>Absolute pressure behind the plate over a cycle, evenly spaced, Pa; one value where only a mean is known.</summary>
    public required IReadOnlyList<double> BehindPascals { get; init; }

    /// <summary>The air of the day.</summary>
    public required GasState Outside { get; init; }

    /// <summary>Opening of the plate from its seat by the breathing model, degrees; null where no car is named.</summary>
    public double? PlateDegrees { get; init; }

    /// <summary>Fuel of one barrel at idle, kg/s.</summary>
    public required double FuelKilogramsPerSecond { get; init; }

    /// <summary>Where these figures come from.</summary>
    public required string Origin { get; init; }

    /// <summary>Why the air may be otherwise; empty where nothing speaks against it.</summary>
    public string Doubt { get; init; } = "";

    /// <summary>Mean depression behind the plate, Pa.</summary>
    public double DepressionPascals => Outside.PressurePascals - BehindPascals.Average();
}
