namespace Tickover.Reports.Charts;

/// <summary>Where a paint's colour comes from.</summary>
internal enum PaintKind
{
    /// <summary>The theme in force.</summary>
    Theme,

    /// <summary>The data, the same in every theme.</summary>
    Data,

    /// <summary>Slanted lines of a <see cref="Charts.Hatch"/>.</summary>
    Hatch,
}
