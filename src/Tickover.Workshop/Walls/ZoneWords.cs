namespace Tickover.Workshop.Walls;

/// <summary>Names of zones.</summary>
public static class ZoneWords
{
    /// <summary>The name at the beginning of a sentence.</summary>
    /// <param name="kind">The zone.</param>
    /// <returns>"Under pads" or "Open wall".</returns>
    public static string Name(ZoneKind kind) => kind is ZoneKind.Pad ? "Under pads" : "Open wall";

    /// <summary>The name within a sentence.</summary>
    /// <param name="kind">The zone.</param>
    /// <returns>"under the pads" or "on the open wall".</returns>
    public static string Where(ZoneKind kind) => kind is ZoneKind.Pad ? "under the pads" : "on the open wall";
}
