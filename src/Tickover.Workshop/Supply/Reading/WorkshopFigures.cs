namespace Tickover.Workshop.Supply.Reading;

/// <summary>A pump known by two workshop figures, to be put back into its line once that is read.</summary>
/// <param name="Path">Where they stand.</param>
/// <param name="DeadHeadPascals">Pressure at the last float valve with the needles shut, Pa.</param>
/// <param name="OpenFlow">Flow out of the last valve's open line, m³/s.</param>
internal sealed record WorkshopFigures(string Path, double DeadHeadPascals, double OpenFlow);
