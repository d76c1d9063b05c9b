using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>Everything a survey says.</summary>
public sealed record WallAnalysis
{
    /// <summary>The survey.</summary>
    public required WallSurvey Survey { get; init; }

    /// <summary>Zones that have area: pads first.</summary>
    public required IReadOnlyList<ZoneFinding> Zones { get; init; }

    /// <summary>Chance of a hole over the years; empty where a zone has too few readings.</summary>
    public required IReadOnlyList<HoleYear> Course { get; init; }

    /// <summary>Even loss over the cells measured; null where none was, or where pits were read by probe.</summary>
    public UniformLoss? Loss { get; init; }

    /// <summary>Metals in contact.</summary>
    public required IReadOnlyList<CoupleFinding> Couples { get; init; }

    /// <summary>What to do.</summary>
    public required WallVerdict Verdict { get; init; }

    /// <summary>What was accepted but is unusual or weakens the answer.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>Chance of a hole so many years on.</summary>
    /// <param name="years">A year of the course.</param>
    /// <returns>The chance; null where there is none.</returns>
    public ChanceBand? At(double years) => Course.Count == 0 ? null : Course.MinBy(y => Math.Abs(y.Years - years)).Chance;
}
