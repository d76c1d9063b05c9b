using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>A length of pipe or hose with the bends in it.</summary>
public sealed record PipeRun : SupplyPart
{
    /// <summary>Bore, m; above zero.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Length along the run, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Roughness of the wall, m; not negative. Drawn tube and hose 1.5 µm.</summary>
    public double RoughnessMetres { get; init; } = SupplyLosses.DrawnTubeRoughnessMetres;

    /// <summary>Losses of its bends and ends in velocity heads, 1; not negative.</summary>
    public double LossCoefficient { get; init; }

    /// <inheritdoc/>
    public override double SpeedBoreMetres => BoreMetres;

    /// <summary>Reynolds number at a flow, 1.</summary>
    /// <param name="volumeFlow">Flow, m³/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa s; above zero.</param>
    /// <returns>1; not negative.</returns>
    public double Reynolds(double volumeFlow, double density, double viscosity) =>
        4 * density * Math.Abs(volumeFlow) / (Math.PI * BoreMetres * viscosity);

    /// <inheritdoc/>
    internal override double Drop(double volumeFlow, double density, double viscosity)
    {
        var head = QuadraticDrop.VelocityHead(Circle.Area(BoreMetres), density);
        var bends = LossCoefficient > 0 ? QuadraticDrop.Of(LossCoefficient * head, volumeFlow) : 0;
        var reynolds = Reynolds(volumeFlow, density, viscosity);
        if (reynolds <= DarcyFriction.LaminarUpTo)
        {
            return bends + LaminarDrop(volumeFlow, viscosity);
        }

        var friction = DarcyFriction.Of(reynolds, RoughnessMetres / BoreMetres) * LengthMetres / BoreMetres;
        return bends + friction * head * volumeFlow * Math.Abs(volumeFlow); // supply (5)
    }

    /// <inheritdoc/>
    internal override IEnumerable<string> OwnFaults() =>
    [
        .. SupplyText.NotAboveZero(Name, "bore in metres", BoreMetres),
        .. SupplyText.NotAboveZero(Name, "length in metres", LengthMetres),
        .. SupplyText.Negative(Name, "roughness in metres", RoughnessMetres),
        .. SupplyText.Negative(Name, "loss coefficient", LossCoefficient),
    ];

    // The friction factor has no value at rest; the drop has.
    private double LaminarDrop(double volumeFlow, double viscosity) =>
        128 * viscosity * LengthMetres * volumeFlow / (Math.PI * Math.Pow(BoreMetres, 4)); // supply (1)
}
