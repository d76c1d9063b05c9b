using Tickover.Workshop.StripDown.Jets;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What can hurt somebody while levels are measured.</summary>
public static class LevelCautions
{
    /// <summary>All of them, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A wet level is taken with petrol in an open chamber: out of doors or under extraction, no spark, gloves and goggles, an extinguisher at hand; the local rules come first.",
        JetCautions.All[1],
        "A float that leaked may hold fuel: warm water shows the hole. Never a flame or a soldering iron on it.",
    ];
}
