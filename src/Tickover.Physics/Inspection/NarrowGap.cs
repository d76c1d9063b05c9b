using Tickover.Physics.Air;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Inspection;

/// <summary>A narrow way for air into the inlet: round a worn spindle, under a bowed flange. Docs/physics/inspection.md (14) to (19).</summary>
/// <remarks>An entry as an orifice, then viscous flow between walls close together. Narrow gaps come out by friction alone, wide and short ones by the orifice alone; between them they share the pressure.</remarks>
public sealed record NarrowGap
{
    private const double LaminarBelow = 2000;
    private const double ViscousParts = 24;                 // 12 for a slot, 2 for the mean of the two pressures
    private const int Halvings = 60;

    /// <summary>Widest height of the gap, m; not negative.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>Length across the flow, m; above zero.</summary>
    public required double WidthMetres { get; init; }

    /// <summary>Length along the flow, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Mean height over the widest, 1.</summary>
    public double MeanHeight { get; init; } = 1;

    /// <summary>Mean of the cube of the height over the cube of the widest, 1: what viscous flow goes by.</summary>
    public double MeanCube { get; init; } = 1;

    /// <summary>Discharge coefficient of the entry, 1.</summary>
    public double EntryCoefficient { get; init; } = 0.8;    // a square edge to a passage longer than it is high; carburation reference: attached flow 0.7 to 0.8 (from memory)

    /// <summary>Open area, m².</summary>
    public double AreaSquareMetres => HeightMetres * WidthMetres * MeanHeight; // inspection (14)

    /// <summary>The clearance round a whole spindle.</summary>
    /// <param name="spindleMetres">Diameter of the spindle, m; above zero.</param>
    /// <param name="bushMetres">Diameter of the bush, m; not below the spindle's.</param>
    /// <param name="lengthMetres">Length of the bush, m; above zero.</param>
    /// <param name="eccentricity">How far the spindle lies off the middle over the radial clearance, 0 to 1.</param>
    /// <returns>The gap.</returns>
    public static NarrowGap Round(double spindleMetres, double bushMetres, double lengthMetres, double eccentricity = 0)
    {
        var e = Precondition.Within(eccentricity, 0, 1);
        return new NarrowGap
        {
            HeightMetres = Radial(spindleMetres, bushMetres),
            WidthMetres = Math.PI * (spindleMetres + bushMetres) / 2,
            LengthMetres = lengthMetres,
            MeanCube = 1 + (1.5 * e * e), // inspection (15)
        };
    }

    /// <summary>The half of the clearance that opens behind a shut plate; the other half opens before it, where there is hardly any depression.</summary>
    /// <param name="spindleMetres">Diameter of the spindle, m; above zero.</param>
    /// <param name="bushMetres">Diameter of the bush, m; not below the spindle's.</param>
    /// <param name="lengthMetres">Length of the bush, m; above zero.</param>
    /// <param name="eccentricity">How far the spindle lies towards the engine over the radial clearance, −1 to 1: at 1 the depression has pulled it home and it shuts the way in part.</param>
    /// <returns>The gap.</returns>
    public static NarrowGap HalfRound(double spindleMetres, double bushMetres, double lengthMetres, double eccentricity = 0)
    {
        var e = Precondition.Within(eccentricity, -1, 1);
        return new NarrowGap
        {
            HeightMetres = Radial(spindleMetres, bushMetres),
            WidthMetres = Math.PI * (spindleMetres + bushMetres) / 4,
            LengthMetres = lengthMetres,
            MeanHeight = 1 - (2 * e / Math.PI), // inspection (16)
            MeanCube = 1 - (6 * e / Math.PI) + (1.5 * e * e) - (4 * e * e * e / (3 * Math.PI)), // inspection (16)
        };
    }

    /// <summary>The gap under a flange that is bowed evenly over a span.</summary>
    /// <param name="gapMetres">Widest gap by feeler, m; not negative.</param>
    /// <param name="spanMetres">Length over which light is seen, m; above zero.</param>
    /// <param name="landMetres">Width of the flange's land from outside to the bore, m; above zero.</param>
    /// <returns>The gap.</returns>
    public static NarrowGap Bowed(double gapMetres, double spanMetres, double landMetres) => new()
    {
        HeightMetres = Precondition.NotNegative(gapMetres),
        WidthMetres = Precondition.Positive(spanMetres),
        LengthMetres = Precondition.Positive(landMetres),
        MeanHeight = 2 / 3d,   // inspection (17): a parabola
        MeanCube = 16 / 35d,   // inspection (17): its cube
    };

    /// <summary>Mass flow of air.</summary>
    /// <param name="outside">Air outside.</param>
    /// <param name="insidePascals">Absolute pressure inside, Pa; above zero. No flow where it is not below the outside's.</param>
    /// <returns>kg/s with what the formula is worth there.</returns>
    public (double KilogramsPerSecond, Validity Validity) Flow(GasState outside, double insidePascals)
    {
        if (HeightMetres <= 0 || insidePascals >= outside.PressurePascals)
        {
            return (0, Validity.Inside);
        }

        var entry = new CompressibleOrifice { EffectiveAreaSquareMetres = EntryCoefficient * AreaSquareMetres };
        var (low, high) = (insidePascals, outside.PressurePascals);
        for (var i = 0; i < Halvings; i++)
        {
            // past the entry the pressure lies where as much goes in as friction lets through
            var middle = (low + high) / 2;
            (low, high) = entry.MassFlow(outside, outside with { PressurePascals = middle }) > Viscous(outside.TemperatureKelvin, middle, insidePascals) ? (middle, high) : (low, middle); // inspection (19)
        }

        var flow = Viscous(outside.TemperatureKelvin, (low + high) / 2, insidePascals);
        var reynolds = 2 * flow / (WidthMetres * AirViscosity.PascalSeconds(outside.TemperatureKelvin));
        return (flow, Validity.Of("Reynolds number in the gap", reynolds, (0, LaminarBelow), (0, 2 * LaminarBelow)));
    }

    private double Viscous(double kelvin, double fromPascals, double toPascals)
    {
        var mu = AirViscosity.PascalSeconds(kelvin);
        var h = HeightMetres;
        return WidthMetres * h * h * h * MeanCube * ((fromPascals * fromPascals) - (toPascals * toPascals)) / (ViscousParts * mu * IdealGas.Air.GasConstant * kelvin * LengthMetres); // inspection (18)
    }

    private static double Radial(double spindleMetres, double bushMetres) =>
        Precondition.NotNegative(bushMetres - Precondition.Positive(spindleMetres)) / 2;
}
