namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Something that must happen, of which nobody prints a figure: ours must lie within bounds.</summary>
public sealed record ShapeCheck
{
    /// <summary>What must happen.</summary>
    public required string Statement { get; init; }

    /// <summary>What is computed to see it.</summary>
    public required string Figure { get; init; }

    /// <summary>Who says so.</summary>
    public required string Source { get; init; }

    /// <summary>What kind of statement it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>Least figure that still shows it.</summary>
    public required double AtLeast { get; init; }

    /// <summary>Largest figure that still shows it.</summary>
    public required double AtMost { get; init; }

    /// <summary>Computes our figure.</summary>
    public required Func<double> Ours { get; init; }
}
