namespace Tickover.Workshop.FaultFinding;

/// <summary>Something in the car's own record that counts as a symptom.</summary>
/// <param name="Symptom">Key of the symptom.</param>
/// <param name="Words">What the record says, such as "round of 3 May: barrel 4 lean".</param>
public sealed record FaultEvidence(string Symptom, string Words);
