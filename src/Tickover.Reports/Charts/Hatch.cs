namespace Tickover.Reports.Charts;

/// <summary>The hatches in use, each with one meaning.</summary>
internal enum Hatch
{
    /// <summary>No answer here: wide, in the theme's hair colour.</summary>
    NoAnswer,

    /// <summary>Leaner than the target: black, on light colours.</summary>
    Lean,

    /// <summary>Richer than the target: white, on dark colours.</summary>
    Rich,

    /// <summary>Metal cut through.</summary>
    Casing,
}
