namespace Tickover.Workshop.StripDown.Jets;

/// <summary>What can hurt somebody at a flow bench.</summary>
public static class JetCautions
{
    /// <summary>All of them, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Petrol on a bench burns and its vapour creeps: out of doors or under extraction, no spark, gloves and goggles, an extinguisher at hand; the local rules come first.",
        "This tablet can set off vapour: put it down outside the vapour zone and enter the readings afterwards.",
    ];
}
