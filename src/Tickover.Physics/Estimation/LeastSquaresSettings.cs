namespace Tickover.Physics.Estimation;

/// <summary>How a least-squares search goes about it.</summary>
public sealed record LeastSquaresSettings
{
    /// <summary>Largest number of accepted steps, 1.</summary>
    public int MaximumSteps { get; init; } = 200;

    /// <summary>Relative change of the cost below which it has settled, 1.</summary>
    public double CostTolerance { get; init; } = 1e-12;

    /// <summary>Change of the parameters, as a part of their size, below which they have settled, 1.</summary>
    public double ParameterTolerance { get; init; } = 1e-10;

    /// <summary>
    /// Step of the differences as a part of the parameter's <see cref="Scale"/> or, without one, of its size, 1. Null for the one that fits
    /// double precision: its square root one-sided, its cube root central.
    /// </summary>
    public double? DifferenceStep { get; init; }

    /// <summary>Whether differences are taken to both sides: twice the work, far more accurate.</summary>
    public bool Central { get; init; } = true;

    /// <summary>What counts as a sizeable move of each parameter; null to take each parameter's own size.</summary>
    public IReadOnlyList<double>? Scale { get; init; }

    /// <summary>Residual beyond which a row counts less (Huber), in its own unit; infinity for plain least squares.</summary>
    public double HuberLimit { get; init; } = double.PositiveInfinity;

    /// <summary>How many of the rows, from the first, <see cref="HuberLimit"/> holds for; the rest, such as priors, always count in full.</summary>
    public int RobustRows { get; init; } = int.MaxValue;
}
