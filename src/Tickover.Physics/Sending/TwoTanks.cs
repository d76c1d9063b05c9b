namespace Tickover.Physics.Sending;

/// <summary>Two tanks joined by a pipe, with a sender, a gauge and an engine that drinks.</summary>
/// <remarks>Immutable and thread-safe; each run has its own state. docs/physics/sending.md.</remarks>
public sealed record TwoTanks
{
    /// <summary>Petrol at 20 °C, m²/s: 0.5 mPa s over 740 kg/m³ (from memory).</summary>
    public const double PetrolViscosity = 6.8e-7;

    /// <summary>Petrol at 20 °C, kg/m³.</summary>
    public const double PetrolDensity = 740;

    /// <summary>Longest step of the integration, s.</summary>
    public const double LongestStep = 0.01;

    /// <summary>Makes the pair.</summary>
    /// <param name="left">The left tank.</param>
    /// <param name="right">The right tank.</param>
    /// <param name="pipe">The pipe between them.</param>
    public TwoTanks(LinkedTank left, LinkedTank right, CrossPipe pipe)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        ArgumentNullException.ThrowIfNull(pipe);
        (Left, Right, Pipe) = (left.Checked(), right.Checked(), pipe.Checked());
    }

    /// <summary>The left tank.</summary>
    public LinkedTank Left { get; init; }

    /// <summary>The right tank.</summary>
    public LinkedTank Right { get; init; }

    /// <summary>The pipe between them.</summary>
    public CrossPipe Pipe { get; init; }

    /// <summary>Sender and gauge; none: only fuel is looked at.</summary>
    public SenderFitting? Fitting { get; init; }

    /// <summary>The engine and its return line.</summary>
    public FuelDraw Draw { get; init; } = FuelDraw.None;

    /// <summary>Kinematic viscosity of the fuel, m²/s.</summary>
    public double Viscosity { get; init; } = PetrolViscosity;

    /// <summary>Density of the fuel, kg/m³; matters only to trapped air.</summary>
    public double Density { get; init; } = PetrolDensity;

    /// <summary>Gravity, m/s².</summary>
    public double Gravity { get; init; } = Air.AirConstants.StandardGravityMetresPerSecondSquared;

    /// <summary>Outside pressure, Pa; matters only to trapped air.</summary>
    public double OutsidePressure { get; init; } = 101325;

    /// <summary>Runs the tanks over a road.</summary>
    /// <param name="trace">The road.</param>
    /// <param name="volumes">Fuel in the left and the right tank at the start, m³.</param>
    /// <param name="everySeconds">Time between the moments given back, s; rounded to whole steps.</param>
    /// <param name="fills">Fuel put in on the way, in order of time; what finds no room stays in the can.</param>
    /// <returns>The moments, the first at the start.</returns>
    public TankMoments Run(RoadTrace trace, (double Left, double Right) volumes, double everySeconds = 0.1, IReadOnlyList<FuelFill>? fills = null) =>
        Run(trace, volumes, everySeconds, LongestStep, fills);

    internal TankMoments Run(RoadTrace trace, (double Left, double Right) volumes, double everySeconds, double longestStep, IReadOnlyList<FuelFill>? fills)
    {
        ArgumentNullException.ThrowIfNull(trace);
        Fitting?.Checked();
        Precondition.Within(volumes.Left, 0, 1.2 * Left.Table.CapacityCubicMetres);
        Precondition.Within(volumes.Right, 0, 1.2 * Right.Table.CapacityCubicMetres);
        var parts = Math.Max(1, (int)Math.Ceiling(trace.StepSeconds / longestStep - 1e-9));
        return new TankStepper(this, trace.StepSeconds / parts, volumes).Run(trace, parts, Precondition.Positive(everySeconds), fills ?? []);
    }
}
