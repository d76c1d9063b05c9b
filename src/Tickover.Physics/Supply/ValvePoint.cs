namespace Tickover.Physics.Supply;

/// <summary>A float valve with its chamber in a running engine.</summary>
public sealed record ValvePoint
{
    /// <summary>The valve.</summary>
    public required FloatValve Valve { get; init; }

    /// <summary>What the engine takes, kg/s.</summary>
    public required double DemandKilogramsPerSecond { get; init; }

    /// <summary>What comes, kg/s.</summary>
    public required double MassFlow { get; init; }

    /// <summary>Pressure before the seat above the air, Pa.</summary>
    public required double InletGaugePascals { get; init; }

    /// <summary>What would come with the needle right off its seat at that pressure, kg/s.</summary>
    public required double WideOpenKilogramsPerSecond { get; init; }

    /// <summary>How far the fuel stands above the level set, m; negative below. Not a number where the engine takes more than comes: the level falls on.</summary>
    public required double LevelChangeMetres { get; init; }

    /// <summary>Pressure at which it floods at rest, above the air, Pa.</summary>
    public required double FloodingGaugePascals { get; init; }

    /// <summary>Time until the jets draw air where less comes than is taken, s; infinite where enough comes.</summary>
    public required double RunsDrySeconds { get; init; }

    /// <summary>Whether the engine takes more than comes.</summary>
    public bool IsStarved => double.IsFinite(RunsDrySeconds);
}
