using Tickover.Workshop.StripDown.Jets;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What can hurt somebody over stripped carburettors.</summary>
public static class WearCautions
{
    /// <summary>All of them, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Needles and pumps are tried with petrol: out of doors or under extraction, no spark, gloves and goggles, an extinguisher at hand; the local rules come first.",
        JetCautions.All[1],
        "Old flange gaskets may hold asbestos: wet, no scraping dry, bagged; who may take them off is ruled locally.",
        "A plate that was off can jam: whatever was done, it must snap shut from every opening before an engine runs on it.",
    ];
}
