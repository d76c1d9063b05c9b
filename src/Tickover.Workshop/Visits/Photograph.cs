namespace Tickover.Workshop.Visits;

/// <summary>A photograph and what is marked on it. The picture itself is kept beside the record, without where it was taken.</summary>
public sealed record Photograph : RecordItem<Photograph>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The stage it was taken in.</summary>
    public Stage Stage { get; init; }

    /// <summary>The finding it shows; null where it shows none.</summary>
    public Id<Finding>? Finding { get; init; }

    /// <summary>What of the car it shows, such as a carburettor; null where it is of nothing in particular.</summary>
    public Place? Of { get; init; }

    /// <summary>What it shows.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Arrows on it.</summary>
    public IReadOnlyList<PhotographMark> Marks { get; init; } = [];

    /// <summary>SHA-256 of the picture kept, in small hexadecimal letters.</summary>
    public string Hash { get; init; } = "";

    /// <summary>Width in pixels.</summary>
    public int Width { get; init; }

    /// <summary>Height in pixels.</summary>
    public int Height { get; init; }

    /// <summary>Whether the owner's account shows it.</summary>
    public bool InHandOver { get; init; } = true;
}
