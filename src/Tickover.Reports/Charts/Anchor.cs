namespace Tickover.Reports.Charts;

/// <summary>Which part of a text stands at its point.</summary>
internal enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
