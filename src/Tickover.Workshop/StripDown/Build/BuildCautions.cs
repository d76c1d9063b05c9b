namespace Tickover.Workshop.StripDown.Build;

/// <summary>What can hurt somebody after the build.</summary>
public static class BuildCautions
{
    /// <summary>All of them, the worst first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A throttle that can stick is not driven: with the engine off every plate must snap shut from every opening, ten times out of ten, and a second spring must be able to shut it alone.",
        "First fuel: pump only, engine off, five minutes of looking under every joint, a second person with an extinguisher; the local rules come first.",
    ];
}
