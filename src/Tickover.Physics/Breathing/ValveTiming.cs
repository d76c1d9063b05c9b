namespace Tickover.Physics.Breathing;

/// <summary>One kind of valve of one cylinder: size, lift and when it is open.</summary>
/// <remarks>Crank angles count from firing top dead centre, 0 to 720 degrees.</remarks>
public sealed record ValveTiming
{
    /// <summary>How many such valves the cylinder has, 1 to 3.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Head (outer seat) diameter of one valve, m.</summary>
    public required double HeadDiameterMetres { get; init; }

    /// <summary>Largest lift, m.</summary>
    public required double MaximumLiftMetres { get; init; }

    /// <summary>Crank angle at which the valve leaves its seat, degrees after firing top dead centre.</summary>
    public required double OpensDegrees { get; init; }

    /// <summary>Crank angle at which the valve is seated again, degrees after firing top dead centre; above <see cref="OpensDegrees"/>.</summary>
    public required double ClosesDegrees { get; init; }

    /// <summary>Discharge coefficient on the curtain area (limited by the throat), 1.</summary>
    public double DischargeCoefficient { get; init; } = 0.70;

    /// <summary>Throat (inner seat) diameter as a part of the head diameter, 1.</summary>
    public double ThroatToHeadRatio { get; init; } = 0.87;
}
