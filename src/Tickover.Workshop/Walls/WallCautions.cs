namespace Tickover.Workshop.Walls;

/// <summary>What can hurt somebody in a wall survey; shown before anything else.</summary>
public static class WallCautions
{
    /// <summary>The cautions, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "No welding, brazing, soldering or grinding on a fuel tank here, however long it has stood empty: a teaspoon of petrol in a seam can burst it. Hot work is for a specialist who gas-frees it, certifies that and works under a permit. Follow your local rules.",
        "Probing rust can open a hole. Drain the tank first, outdoors or well aired, away from flames, sparks and chargers.",
        "This tablet can set off vapour: put it down outside the vapour zone and enter the readings afterwards.",
        "These figures are for deciding what to do next. They pronounce no tank safe.",
    ];
}
