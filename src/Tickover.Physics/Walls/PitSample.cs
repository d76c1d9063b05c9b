namespace Tickover.Physics.Walls;

/// <summary>What was read of the deepest pits of patches.</summary>
public sealed record PitSample
{
    /// <summary>Fewer depths than this give no estimate: two figures and a spread cannot come from two readings.</summary>
    public const int FewestDepths = 3;

    /// <summary>Deepest pits that were measured, m.</summary>
    public required IReadOnlyList<double> DepthsMetres { get; init; }

    /// <summary>Patches whose deepest pit was only seen to be shallower than this, m: too small for the gauge.</summary>
    public IReadOnlyList<double> ShallowerThanMetres { get; init; } = [];

    /// <summary>Patches whose deepest pit was only seen to be deeper than this, m: through, or past the end of the probe.</summary>
    public IReadOnlyList<double> DeeperThanMetres { get; init; } = [];

    /// <summary>Smallest step of the gauge, m; above zero. Less scatter than its rounding it cannot show.</summary>
    public required double StepMetres { get; init; }

    /// <summary>How many patches were looked at.</summary>
    public int Count => DepthsMetres.Count + ShallowerThanMetres.Count + DeeperThanMetres.Count;
}
