namespace Tickover.Workshop.Balance.Recorded;

/// <summary>A figure opened to its working.</summary>
/// <param name="Figure">What it is, such as "Mean".</param>
/// <param name="Formula">The formula with the numbers put in.</param>
/// <param name="Origin">Where the inputs come from.</param>
public sealed record WorkingLine(string Figure, string Formula, string Origin);
