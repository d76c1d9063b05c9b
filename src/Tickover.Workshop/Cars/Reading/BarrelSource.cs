using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>One barrel as the document has it.</summary>
internal sealed record BarrelSource
{
    /// <summary>Number of the carburettor, from 1.</summary>
    public required int Carburettor { get; init; }

    /// <summary>Path of the barrel.</summary>
    public required string Path { get; init; }

    /// <summary>Cylinders it feeds; null where the document does not say or is faulty.</summary>
    public required IReadOnlyList<int>? Feeds { get; init; }

    /// <summary>Whether the document says what it feeds, soundly or not.</summary>
    public required bool SaysFeeds { get; init; }

    /// <summary>Its settings, those of wider levels included.</summary>
    public required BarrelSettings Settings { get; init; }

    /// <summary>How many share its air with it.</summary>
    public BarrelPlace Place { get; init; } = BarrelPlace.OneEach;
}
