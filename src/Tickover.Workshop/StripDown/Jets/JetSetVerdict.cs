namespace Tickover.Workshop.StripDown.Jets;

/// <summary>Whether jets of one part and stamp are equal.</summary>
/// <param name="Part">What they are, such as "main jet".</param>
/// <param name="Stamp">What is stamped on them.</param>
/// <param name="Count">How many were on the bench.</param>
/// <param name="SpreadPart">Widest from narrowest, as a part of the middle flow.</param>
/// <param name="Outside">Those further off the middle than the limit, the band counted.</param>
/// <param name="CannotTell">Those whose band reaches over the limit.</param>
public sealed record JetSetVerdict(string Part, string Stamp, int Count, double SpreadPart, IReadOnlyList<JetVerdict> Outside, IReadOnlyList<JetVerdict> CannotTell);
