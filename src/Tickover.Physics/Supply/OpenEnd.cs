using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>The line taken off and held into a measuring can.</summary>
public sealed record OpenEnd : SupplyPart
{
    /// <summary>Bore of the end, whose speed is lost in the can, m; above zero.</summary>
    public required double BoreMetres { get; init; }

    /// <inheritdoc/>
    public override bool IsEnd => true;

    /// <inheritdoc/>
    public override double SpeedBoreMetres => BoreMetres;

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) =>
        QuadraticDrop.Of(SupplyLosses.Exit * QuadraticDrop.VelocityHead(Circle.Area(BoreMetres), density), volumeFlow);

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() => SupplyText.NotAboveZero(Name, "bore in metres", BoreMetres);
}
