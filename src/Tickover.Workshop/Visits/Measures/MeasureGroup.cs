namespace Tickover.Workshop.Visits.Measures;

/// <summary>The measures under one heading of a stage.</summary>
/// <param name="Step">The part of the stage.</param>
/// <param name="Measures">The measures, in the order of the work.</param>
public sealed record MeasureGroup(SubStep Step, IReadOnlyList<MeasureDefinition> Measures)
{
    /// <summary>The heading.</summary>
    public string Heading => Step.Heading();
}
