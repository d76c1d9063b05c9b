namespace Tickover.Physics.Estimation;

/// <summary>How a least-squares search ended.</summary>
public enum EstimateEnding
{
    /// <summary>A further step would change the cost by less than the tolerance.</summary>
    CostSettled,

    /// <summary>A further step would move the parameters by less than the tolerance.</summary>
    ParametersSettled,

    /// <summary>The allowed steps ran out; the best parameters found are given.</summary>
    OutOfSteps,

    /// <summary>No step, however short, made the cost less; the best parameters found are given.</summary>
    NoWayDown,
}
