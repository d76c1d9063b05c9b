namespace Tickover.Physics.Estimation;

/// <summary>What a least-squares search found.</summary>
public sealed record LeastSquaresResult
{
    /// <summary>The parameters.</summary>
    public required IReadOnlyList<double> Parameters { get; init; }

    /// <summary>The residuals there, as the model gives them (not weighted down).</summary>
    public required IReadOnlyList<double> Residuals { get; init; }

    /// <summary>Change of each residual with each parameter there, [row, parameter].</summary>
    public required double[,] Jacobian { get; init; }

    /// <summary>Half the sum of squares; with a Huber limit the sum of its losses.</summary>
    public required double Cost { get; init; }

    /// <summary>How it ended.</summary>
    public required EstimateEnding Ending { get; init; }

    /// <summary>Steps taken.</summary>
    public required int Steps { get; init; }

    /// <summary>Times the model was computed, those for the differences among them.</summary>
    public required int Evaluations { get; init; }

    /// <summary>Weight of each row in the cost, 1 for those within the Huber limit.</summary>
    public required IReadOnlyList<double> Weights { get; init; }
}
