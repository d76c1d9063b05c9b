namespace Tickover.Workshop.Visits.Gates;

/// <summary>Something done on the car that undoes checks signed before it.</summary>
/// <param name="Act">Number of the act it was last kept by; it orders events whatever the clocks said.</param>
/// <param name="Kind">What it undoes.</param>
/// <param name="Words">What was done, as a clause: "\"New hose\" was fitted".</param>
public sealed record Upset(long Act, Disturbance Kind, string Words);
