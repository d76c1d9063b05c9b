using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Walls;

/// <summary>The outcome of reading a wall document: a survey, or everything that is wrong with it at once.</summary>
/// <param name="Survey">The survey; null where there are faults.</param>
/// <param name="Faults">All faults; empty where there is a survey.</param>
public sealed record WallDocumentReading(WallSurvey? Survey, IReadOnlyList<Fault> Faults);
