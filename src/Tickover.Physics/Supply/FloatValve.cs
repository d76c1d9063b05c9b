using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>A float valve and the chamber it fills: the line ends at its seat.</summary>
public sealed record FloatValve : SupplyPart
{
    /// <summary>Bore of the seat, m; above zero. Usual 1.25 to 3 mm.</summary>
    public required double SeatMetres { get; init; }

    /// <summary>Discharge coefficient wide open, 1; above zero to 1.</summary>
    public double DischargeCoefficient { get; init; } = 0.65; // sharp-edged: common practice, measure where it matters

    /// <summary>Float's arm over needle's arm from the pivot, 1; above zero.</summary>
    public double LeverRatio { get; init; } = 3;

    /// <summary>Area of the float in the fuel's surface, m²; above zero.</summary>
    public double FloatAreaSquareMetres { get; init; } = 9e-4;

    /// <summary>Area of the fuel's surface in the chamber beside the float, m²; above zero.</summary>
    public double ChamberAreaSquareMetres { get; init; } = 2.5e-3;

    /// <summary>Pressure above the air at which the level was set, Pa; not negative.</summary>
    public double SetAtGaugePascals { get; init; }

    /// <summary>How far the fuel may rise above the level set before it drips or spills, m; above zero.</summary>
    public double SpillMetres { get; init; } = 0.006;

    /// <summary>How far below the level set the main jet draws air, m; above zero.</summary>
    public double JetDepthMetres { get; init; } = 0.025;

    /// <summary>How far the jets lie ahead of the float's middle, m.</summary>
    public double JetAheadMetres { get; init; }

    /// <summary>How far the jets lie left of the float's middle, m.</summary>
    public double JetLeftMetres { get; init; }

    /// <inheritdoc/>
    public override bool IsEnd => true;

    /// <summary>Lift from which the seat and no longer the needle's edge is the narrowest, m: a needle of 60°.</summary>
    public double FullLiftMetres => SeatMetres / 2;

    /// <summary>Flow with the needle right off its seat, m³/s.</summary>
    /// <param name="gaugePascals">Pressure before the seat above the chamber's, Pa; none or less gives no flow.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m³/s.</returns>
    public double WideOpenFlow(double gaugePascals, double density) =>
        gaugePascals <= 0 ? 0 : DischargeCoefficient * Circle.Area(SeatMetres) * Math.Sqrt(2 * gaugePascals / density); // supply (14)

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) =>
        QuadraticDrop.Of(QuadraticDrop.VelocityHead(DischargeCoefficient * Circle.Area(SeatMetres), density), volumeFlow); // supply (14) inverted

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.NotAboveZero(Name, "bore of the seat in metres", SeatMetres),
        .. SupplyText.OutOf(Name, "discharge coefficient", DischargeCoefficient, 0.1, 1),
        .. SupplyText.NotAboveZero(Name, "lever ratio", LeverRatio),
        .. SupplyText.NotAboveZero(Name, "area of the float in square metres", FloatAreaSquareMetres),
        .. SupplyText.NotAboveZero(Name, "area of the chamber in square metres", ChamberAreaSquareMetres),
        .. SupplyText.Negative(Name, "pressure the level was set at", SetAtGaugePascals),
        .. SupplyText.NotAboveZero(Name, "height of the spill in metres", SpillMetres),
        .. SupplyText.NotAboveZero(Name, "depth of the jet in metres", JetDepthMetres),
    ];
}
