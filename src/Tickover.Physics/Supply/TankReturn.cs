using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>The restrictor at the end of a return line into the tank.</summary>
public sealed record TankReturn : SupplyPart
{
    /// <summary>Bore of the restrictor, m; above zero.</summary>
    public required double RestrictorMetres { get; init; }

    /// <summary>Discharge coefficient, 1; above zero to 1. A drilled plug of a few bores' length 0.8.</summary>
    public double DischargeCoefficient { get; init; } = 0.8;

    /// <inheritdoc/>
    public override bool IsEnd => true;

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) =>
        QuadraticDrop.Of(QuadraticDrop.VelocityHead(DischargeCoefficient * Circle.Area(RestrictorMetres), density), volumeFlow); // supply (14) inverted

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.NotAboveZero(Name, "bore of the restrictor in metres", RestrictorMetres),
        .. SupplyText.OutOf(Name, "discharge coefficient", DischargeCoefficient, 0.1, 1),
    ];
}
