namespace Tickover.Reports.Charts;

/// <summary>How values are spread along an axis.</summary>
internal enum ScaleKind
{
    /// <summary>Evenly.</summary>
    Linear,

    /// <summary>By the square root: small values get more room.</summary>
    SquareRoot,
}
