namespace Tickover.Workshop.StripDown.Wear;

/// <summary>A carburettor's body as it was measured.</summary>
/// <param name="Where">Which carburettor.</param>
/// <param name="Flange">Gaps under its flange.</param>
/// <param name="Needle">Its needle valve; null where it was not tried.</param>
public sealed record WornBody(string Where, IReadOnlyList<FlangeGap> Flange, NeedleTest? Needle);
