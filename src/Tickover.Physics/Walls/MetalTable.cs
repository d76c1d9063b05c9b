namespace Tickover.Physics.Walls;

/// <summary>Figures of the metals.</summary>
/// <remarks>
/// Anodic index after the practice of MIL-STD-889 and MIL-F-14072, as a table of it gives them; zinc, cadmium, magnesium and iron from memory. Equivalent
/// weights after ASTM G102, densities, stiffness and yield of soft sheet from handbooks, from memory. Terne is reckoned as lead-tin solder.
/// The gentle stress is some two thirds of the yield of soft (annealed) sheet: seams and age leave no more.
/// </remarks>
public static class MetalTable
{
    private const double Iron = 0.85, Zinc = 1.20, Tin = 0.60, TinLead = 0.65, Cadmium = 0.95;

    /// <summary>All metals.</summary>
    public static IReadOnlyList<MetalProperties> All { get; } =
    [
        Steel(Metal.Steel, Iron),
        Steel(Metal.TerneSteel, TinLead),
        Steel(Metal.GalvanisedSteel, Zinc),
        Steel(Metal.TinPlate, Tin),
        Steel(Metal.CadmiumPlate, Cadmium),
        Plain(Metal.Aluminium, 0.90, 9.01e-3, 2700, 70e9, 35e6),
        Plain(Metal.AluminiumCopper, 0.75, 9.38e-3, 2780, 73e9, 50e6),
        Plain(Metal.Stainless, 0.50, 25.12e-3, 7940, 193e9, 135e6),
        Plain(Metal.Brass, 0.40, 32.04e-3, 8520, 105e9, 60e6),
        Plain(Metal.Copper, 0.35, 31.77e-3, 8940, 117e9, 40e6),
        Plain(Metal.Solder, 0.65, 81.4e-3, 8900, 30e9, 10e6),
        Plain(Metal.Lead, 0.70, 103.6e-3, 11_340, 16e9, 5e6),
        Plain(Metal.Chromium, 0.60, 17.33e-3, 7190, 279e9, 135e6),
        Plain(Metal.Nickel, 0.30, 29.35e-3, 8900, 200e9, 70e6),
        Plain(Metal.Zinc, 1.25, 32.69e-3, 7140, 97e9, 40e6),
        Plain(Metal.Magnesium, 1.75, 12.15e-3, 1740, 45e9, 30e6),
    ];

    /// <summary>Figures of one metal.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>Its figures.</returns>
    public static MetalProperties Of(Metal metal) => All[(int)metal];

    private static MetalProperties Steel(Metal metal, double surface) => Plain(metal, Iron, 27.92e-3, 7870, 205e9, 110e6) with { SurfaceIndexVolts = surface };

    private static MetalProperties Plain(Metal metal, double index, double equivalentWeight, double density, double stiffness, double gentle) => new()
    {
        Metal = metal,
        SurfaceIndexVolts = index,
        BaseIndexVolts = index,
        EquivalentWeightKilogramsPerMole = equivalentWeight,
        DensityKilogramsPerCubicMetre = density,
        StiffnessPascals = stiffness,
        GentleStressPascals = gentle,
    };
}
