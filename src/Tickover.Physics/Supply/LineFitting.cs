using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>Pick-up, tap, union, bend or tee: a loss without length.</summary>
public sealed record LineFitting : SupplyPart
{
    /// <summary>Bore, m; above zero.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Loss in velocity heads of that bore, 1; not negative. See <see cref="SupplyLosses"/>.</summary>
    public required double LossCoefficient { get; init; }

    /// <inheritdoc/>
    public override double SpeedBoreMetres => BoreMetres;

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity) =>
        QuadraticDrop.Of(LossCoefficient * QuadraticDrop.VelocityHead(Circle.Area(BoreMetres), density), volumeFlow);

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.NotAboveZero(Name, "bore in metres", BoreMetres),
        .. SupplyText.Negative(Name, "loss coefficient", LossCoefficient),
    ];
}
