namespace Tickover.Workshop.StripDown.Wear;

/// <summary>The engine as it is written where no car document is at hand.</summary>
internal sealed record WrittenWearEngine(double? Swept, double? Depression);
