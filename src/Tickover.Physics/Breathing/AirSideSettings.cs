namespace Tickover.Physics.Breathing;

/// <summary>How finely the gas exchange is solved.</summary>
public sealed record AirSideSettings
{
    /// <summary>Steps in a cycle of 720 degrees at <see cref="FineBelowRpm"/> and above; 720 is one crank degree.</summary>
    public int StepsPerCycle { get; init; } = 720;

    /// <summary>Below this speed the step is halved: a degree lasts long there against the filling of the port.</summary>
    public double FineBelowRpm { get; init; } = 2000;

    /// <summary>Below this speed it is halved twice, where a barrel feeds one cylinder.</summary>
    public double FinestBelowRpm { get; init; } = 1400;

    /// <summary>Largest change of any state from one cycle to the next, relative to its size, at which a point is left as periodic.</summary>
    public double Tolerance { get; init; } = 2e-5;

    /// <summary>The same change up to which a point that cannot be brought lower still counts as settled.</summary>
    public double AcceptedResidual { get; init; } = 1e-4;

    /// <summary>Cycles after which a point that is not accepted is tried again at half the step.</summary>
    public int MaximumCycles { get; init; } = 20;

    /// <summary>Workers that share the grid; the answer does not depend on it.</summary>
    public int Workers { get; init; } = 2;
}
