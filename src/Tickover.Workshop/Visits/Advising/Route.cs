namespace Tickover.Workshop.Visits.Advising;

/// <summary>Where a visit has got to on its route.</summary>
public static class Route
{
    /// <summary>All stages in the order of the route.</summary>
    public static IReadOnlyList<Stage> Stages { get; } = Enum.GetValues<Stage>();

    /// <summary>How far a stage has got.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="stage">The stage.</param>
    /// <returns>Its state; ahead where nothing is noted.</returns>
    public static StageState StateOf(VisitRecord record, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Stages.LastOrDefault(s => s.Stage == stage && !s.Removed)?.State ?? StageState.Ahead;
    }

    /// <summary>The stage in hand: the first begun, else the first that is neither done nor left out; hand-over at the end.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The stage.</returns>
    public static Stage Next(VisitRecord record)
    {
        foreach (var wanted in (ReadOnlySpan<StageState>)[StageState.Begun, StageState.Ahead])
        {
            foreach (var stage in Stages)
            {
                if (StateOf(record, stage) == wanted)
                {
                    return stage;
                }
            }
        }

        return Stage.HandOver;
    }

    /// <summary>Stages still to be done, the one in hand among them.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The stages.</returns>
    public static IReadOnlyList<Stage> Left(VisitRecord record) => [.. Stages.Where(s => StateOf(record, s) is StageState.Ahead or StageState.Begun)];
}
