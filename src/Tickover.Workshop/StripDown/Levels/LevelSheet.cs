using Tickover.Physics.Inspection;
using Tickover.Physics.Supply;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Floats of a set of carburettors, set dry on one day.</summary>
public sealed record LevelSheet
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Name of the fuel, such as "E5".</summary>
    public required string Fuel { get; init; }

    /// <summary>Temperature of the fuel in the chamber, °C.</summary>
    public required double Celsius { get; init; }

    /// <summary>Density of the fuel, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Pressure before the needle while the engine idles, kPa.</summary>
    public required double Pressure { get; init; }

    /// <summary>Pressure with nothing taken out, kPa.</summary>
    public required double DeadHead { get; init; }

    /// <summary>What one carburettor takes at idle, l/h.</summary>
    public required double IdleFlow { get; init; }

    /// <summary>The float's body.</summary>
    public required FloatShape Shape { get; init; }

    /// <summary>Needle, seat and lever.</summary>
    public required FloatValve Valve { get; init; }

    /// <summary>Thickness of the gasket, mm.</summary>
    public required double Gasket { get; init; }

    /// <summary>Depth of the main nozzle's lip below the face of the lid, mm; null where it is not known.</summary>
    public double? Nozzle { get; init; }

    /// <summary>Depth below the face of the lid at which fuel spills, mm.</summary>
    public required double Spill { get; init; }

    /// <summary>Level wanted, mm below the lid; null for the middle of the set.</summary>
    public double? Wanted { get; init; }

    /// <summary>How far levels may differ over the set, mm.</summary>
    public required double Limit { get; init; }

    /// <summary>How far masses may differ over the set, g.</summary>
    public required double MassLimit { get; init; }

    /// <summary>What the rule is good to, ± mm (90 %).</summary>
    public required double Rule { get; init; }

    /// <summary>What the scales are good to, ± g (90 %).</summary>
    public required double Scales { get; init; }

    /// <summary>Signal at the nozzle at which the mixture is told where no car is named, Pa.</summary>
    public required double Signal { get; init; }

    /// <summary>The car; null where none is named.</summary>
    public Car? Car { get; init; }

    /// <summary>The floats in the order written.</summary>
    public required IReadOnlyList<MeasuredFloat> Floats { get; init; }
}
