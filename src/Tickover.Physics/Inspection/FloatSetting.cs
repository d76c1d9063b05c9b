using Tickover.Physics.Supply;

namespace Tickover.Physics.Inspection;

/// <summary>A float that was set dry: where the fuel will stand, docs/physics/inspection.md (8) to (13).</summary>
/// <remarks>The valve, its lift and its force are those of the fuel line (supply (24) to (27)); here comes the float's own body and weight. The lid is taken as level.</remarks>
public sealed record FloatSetting
{
    private const double Gravity = 9.80665;

    /// <summary>The float's body.</summary>
    public required FloatShape Shape { get; init; }

    /// <summary>Mass of the float, counted at its middle, kg; above zero.</summary>
    public required double MassKilograms { get; init; }

    /// <summary>Needle, seat and lever.</summary>
    public required FloatValve Valve { get; init; }

    /// <summary>Depth of the float's lowest point below the face of the lid as the needle just shuts, m.</summary>
    public required double BottomMetres { get; init; }

    /// <summary>Depth below the face of the lid at which fuel spills, m; negative above it.</summary>
    public required double SpillMetres { get; init; }

    /// <summary>Whether the float would carry itself in a fuel.</summary>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>False where it sinks and nothing shuts the needle.</returns>
    public bool Carries(double density) => MassKilograms < Shape.VolumeCubicMetres * density;

    /// <summary>How deep the float lies to hold the needle shut, m.</summary>
    /// <param name="gaugePascals">Pressure before the seat above the air, Pa; not negative.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m; null where even the whole float under fuel does not shut it.</returns>
    public double? Sunk(double gaugePascals, double density)
    {
        var volume = MassKilograms / density // inspection (8)
            + FloatLevel.ShutOffRise(Valve, gaugePascals, density) * Valve.FloatAreaSquareMetres; // inspection (9): supply (24) times its area is the volume, whatever the shape
        return volume <= Shape.VolumeCubicMetres ? Shape.DepthOf(volume) : null;
    }

    /// <summary>Depth of the fuel below the face of the lid, m; more is lower.</summary>
    /// <param name="gaugePascals">Pressure before the seat above the air, Pa; not negative.</param>
    /// <param name="volumeFlow">What the engine takes, m³/s; not negative.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m; null where the needle cannot be shut: it floods.</returns>
    public double? Level(double gaugePascals, double volumeFlow, double density)
    {
        var drop = volumeFlow > 0 && gaugePascals > 0 ? Valve.LeverRatio * FloatLevel.NeedleLift(Valve, gaugePascals, volumeFlow, density) : 0;
        return Sunk(gaugePascals, density) is { } sunk ? BottomMetres + drop - sunk : null; // inspection (10)
    }

    /// <summary>Pressure above the air at which the fuel reaches the spill with nothing taken out, Pa.</summary>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>Pa; zero where it spills without any pressure.</returns>
    public double FloodingPressure(double density)
    {
        if (Sunk(0, density) is not { } rest || BottomMetres - rest <= SpillMetres)
        {
            return 0;
        }

        var most = Math.Min(BottomMetres - SpillMetres, Shape.HeightMetres);
        var rise = most - rest;
        var area = (Shape.Immersed(most) - Shape.Immersed(rest)) / rise; // a body that is not straight by its mean area over the rise
        return FloatLevel.FloodingPressure(Valve with { SetAtGaugePascals = 0, SpillMetres = rise, FloatAreaSquareMetres = area }, density); // inspection (11)
    }

    /// <summary>How far the tang is bent at the needle to move the fuel.</summary>
    /// <param name="metres">How far the fuel is to be moved, m.</param>
    /// <param name="leverRatio">Float's arm over needle's arm, 1; above zero.</param>
    /// <returns>m.</returns>
    public static double TangBend(double metres, double leverRatio) => metres / Precondition.Positive(leverRatio); // inspection (12)

    /// <summary>What a change of level does to the fuel of a plain jet under a signal, as a part of it.</summary>
    /// <param name="riseMetres">How far the fuel stands higher, m.</param>
    /// <param name="lipMetres">Height of the nozzle's lip over the fuel before, m.</param>
    /// <param name="signalPascals">Depression at the nozzle, Pa; above what lifts the fuel to the lip.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <returns>Part of the flow: 0.02 for two per cent more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The signal does not lift the fuel to the lip.</exception>
    public static double FuelChange(double riseMetres, double lipMetres, double signalPascals, double density)
    {
        var before = Precondition.Positive(signalPascals - density * Gravity * lipMetres);
        return Math.Sqrt(Math.Max(0, before + density * Gravity * riseMetres) / before) - 1; // inspection (13)
    }
}
