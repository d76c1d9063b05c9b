namespace Tickover.Workshop.Leaks;

/// <summary>What can hurt somebody in a leak test; shown before anything else.</summary>
public static class LeakCautions
{
    /// <summary>The cautions, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Air under pressure stores energy: a seam that lets go throws pieces. Low pressure only, from a hand pump or a regulated supply with a relief valve or a water column that blows off; never a shop airline. Eye protection, nobody in line with the seams. Follow your local rules for pressure tests.",
        "A test pressure meant for new tanks (0.3 bar and more) would wreck an old tank with thin flat walls.",
        "The tank is drained, dry and aired first: vapour burns, and fuel left in it falsifies the test. This tablet stays outside the vapour zone; enter the readings afterwards.",
        "Water with dye, left standing for a day, finds weeps this test cannot. A tight tank is not a sound one: the test does not show how thin the wall is.",
    ];
}
