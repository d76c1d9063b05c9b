namespace Tickover.Reports.HandOver;

/// <summary>One round of barrels on a strip.</summary>
/// <param name="Label">Which round, such as "As found".</param>
/// <param name="Marks">The barrels: how much air, and whether that is outside the limit.</param>
/// <param name="Mean">Mean over the barrels.</param>
/// <param name="Allowed">Largest accepted deviation from the mean; null where there is no limit.</param>
public sealed record BreathingRow(string Label, IReadOnlyList<(double Air, bool Outside)> Marks, double Mean, double? Allowed);
