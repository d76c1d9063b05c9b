namespace Tickover.Physics.Linkages;

/// <summary>What small changes do to the driven shaft at one position of a <see cref="BallRod"/>.</summary>
public readonly record struct BallRodRates
{
    /// <summary>Turn of the driven shaft for a turn of the driving one, 1. It crosses zero where the rod is in line with the driving lever.</summary>
    /// <remarks>The same for a turn of the driving lever in its clamp; a turn of the driven lever in its clamp turns the shaft back by as much.</remarks>
    public required double DrivenPerDriver { get; init; }

    /// <summary>Turn of the driven shaft for a longer rod, radians per m.</summary>
    public required double DrivenPerMetre { get; init; }

    /// <summary>Sine of the angle between rod and driving lever, −1 to 1: how squarely the lever pulls the rod.</summary>
    public required double DriverSine { get; init; }

    /// <summary>Sine of the angle between rod and driven lever, −1 to 1: how squarely the rod pulls the lever; zero is the dead point.</summary>
    public required double DrivenSine { get; init; }
}
