namespace Tickover.Physics.Flow;

/// <summary>What a jet passes at one pressure drop.</summary>
public sealed record JetPoint
{
    /// <summary>Mass flow, kg/s; negative when it runs back.</summary>
    public required double MassFlowKilogramsPerSecond { get; init; }

    /// <summary>Reynolds number of the loss-free speed, which the coefficient depends on, 1; not negative.</summary>
    public required double IdealReynolds { get; init; }

    /// <summary>Discharge coefficient, 1.</summary>
    public required double DischargeCoefficient { get; init; }

    /// <summary>Whether Reynolds number and bore length lie in the range of the formula.</summary>
    public required Validity Validity { get; init; }
}
