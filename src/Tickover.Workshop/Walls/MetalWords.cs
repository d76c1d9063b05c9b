using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls;

/// <summary>Names of metals.</summary>
public static class MetalWords
{
    private static readonly Dictionary<string, Metal> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["steel"] = Metal.Steel,
        ["terne steel"] = Metal.TerneSteel,
        ["galvanised steel"] = Metal.GalvanisedSteel,
        ["tin plate"] = Metal.TinPlate,
        ["cadmium plate"] = Metal.CadmiumPlate,
        ["aluminium"] = Metal.Aluminium,
        ["aluminium with copper"] = Metal.AluminiumCopper,
        ["stainless steel"] = Metal.Stainless,
        ["brass"] = Metal.Brass,
        ["copper"] = Metal.Copper,
        ["solder"] = Metal.Solder,
        ["lead"] = Metal.Lead,
        ["chromium plate"] = Metal.Chromium,
        ["nickel"] = Metal.Nickel,
        ["zinc"] = Metal.Zinc,
        ["magnesium"] = Metal.Magnesium,
        ["galvanized steel"] = Metal.GalvanisedSteel,
        ["aluminum"] = Metal.Aluminium,
    };

    /// <summary>Metals a wall may be of.</summary>
    public static IReadOnlyList<Metal> OfWalls { get; } = [Metal.Steel, Metal.TerneSteel, Metal.GalvanisedSteel, Metal.Aluminium, Metal.AluminiumCopper, Metal.Stainless, Metal.Brass];

    /// <summary>All names, British first.</summary>
    public static IReadOnlyCollection<string> Names => Words.Keys;

    /// <summary>The name of a metal, such as "terne steel".</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>Its name.</returns>
    public static string Of(Metal metal) => Words.First(w => w.Value == metal).Key;

    /// <summary>The metal of a name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The metal; null where the name is not known.</returns>
    public static Metal? Read(string name) => Words.TryGetValue(name, out var metal) ? metal : null;
}
