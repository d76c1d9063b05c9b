namespace Tickover.Physics.Flow;

/// <summary>Choke and main jet that follow from a <see cref="SizingCase"/>.</summary>
public sealed record SizingResult
{
    /// <summary>Air through one carburettor, kg/s.</summary>
    public required double AirFlowKilogramsPerSecond { get; init; }

    /// <summary>Throat static pressure, Pa.</summary>
    public required double ThroatPressurePascals { get; init; }

    /// <summary>Choke diameter with the obstruction allowed for, m.</summary>
    public required double ChokeDiameterMetres { get; init; }

    /// <summary>Main-jet diameter, m; infinite where the depression does not lift the fuel to the lip.</summary>
    public required double JetDiameterMetres { get; init; }
}
