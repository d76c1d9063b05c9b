namespace Tickover.Workshop.FaultFinding;

/// <summary>An answer that was given.</summary>
/// <param name="Test">Key of the test.</param>
/// <param name="Answer">Key of the answer; empty where it could not be told.</param>
/// <param name="Certainty">How sure.</param>
public sealed record FaultGiven(string Test, string Answer, FaultCertainty Certainty = FaultCertainty.Sure);
