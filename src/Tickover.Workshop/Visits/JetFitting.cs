namespace Tickover.Workshop.Visits;

/// <summary>A set of jets that was chosen and fitted, with what was expected of it: later runs prove it or do not.</summary>
/// <remarks>The car as it was afterwards is the description of the same act; a fitting whose description no longer stands counts as undone.</remarks>
public sealed record JetFitting : RecordItem<JetFitting>, IOfVisit
{
    /// <inheritdoc/>
    public Id<Visit> Visit { get; init; }

    /// <summary>The day it was fitted.</summary>
    public DateOnly On { get; init; }

    /// <summary>Which of the sets on offer was taken, in words such as "best from the shelf".</summary>
    public string Choice { get; init; } = "";

    /// <summary>The description of the car with the set.</summary>
    public Id<CarDescription> Description { get; init; }

    /// <summary>What was changed, in the order of work.</summary>
    public IReadOnlyList<FittedPart> Parts { get; init; } = [];

    /// <summary>Names of the logs the choice rests on; empty where it rests on the description alone.</summary>
    public string RestsOn { get; init; } = "";

    /// <summary>Share of driving expected in target with the jets before, 0 to 1.</summary>
    public double ShareBefore { get; init; }

    /// <summary>Share of driving expected in target with the set, 0 to 1.</summary>
    public double Share { get; init; }

    /// <summary>Lower end of the 90 % band of <see cref="Share"/>, 0 to 1.</summary>
    public double ShareLowest { get; init; }

    /// <summary>Upper end of the 90 % band of <see cref="Share"/>, 0 to 1.</summary>
    public double ShareHighest { get; init; }

    /// <summary>What was expected by regime.</summary>
    public IReadOnlyList<ExpectedRegime> Expected { get; init; } = [];
}
