using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Fuel an engine takes, and how that was come by.</summary>
/// <param name="KilogramsPerSecond">Fuel, kg/s.</param>
/// <param name="Origin">How it was come by, in a sentence with its numbers.</param>
/// <param name="Working">The working; empty where it is as the document says.</param>
internal sealed record DemandFigure(double KilogramsPerSecond, string Origin, IReadOnlyList<WorkingStep> Working);
