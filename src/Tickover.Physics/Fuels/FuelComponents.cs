namespace Tickover.Physics.Fuels;

/// <summary>The liquids petrol is made of or mixed with.</summary>
/// <remarks>
/// Pure liquids: coefficients of R. H. Perry and D. W. Green (eds.), Perry's Chemical Engineers' Handbook, 8th ed., McGraw-Hill 2008,
/// Table 2-32 (density) and Table 2-313 (viscosity). Petrol and ETBE: see each.
/// </remarks>
public static class FuelComponents
{
    private const string DensityTable = "Perry's Chemical Engineers' Handbook, 8th ed., Table 2-32";
    private const string ViscosityTable = "Perry's Chemical Engineers' Handbook, 8th ed., Table 2-313";

    /// <summary>Pump petrol without oxygenates, CH1.85, 745 kg/m³ at 20 °C.</summary>
    public static FuelComponent Petrol { get; } = PetrolOf(1.85);

    /// <summary>Iso-octane (2,2,4-trimethylpentane).</summary>
    public static FuelComponent IsoOctane { get; } = Pure("iso-octane", (8, 18, 0),
        (590.59, 0.27424, 543.8, 0.2847), (165.78, 543.8),
        (-12.928, 1137.5, 0.25725, -3.6929e-28, 10), (165.78, 541.15));

    /// <summary>n-Heptane.</summary>
    public static FuelComponent Heptane { get; } = Pure("n-heptane", (7, 16, 0),
        (612.59, 0.26211, 540.2, 0.28141), (182.57, 540.2),
        (-9.4622, 877.07, -0.23445, 1.4022e22, -10), (180.15, 432.16));

    /// <summary>Toluene.</summary>
    public static FuelComponent Toluene { get; } = Pure("toluene", (7, 8, 0),
        (879.2, 0.27136, 591.75, 0.29241), (178.18, 591.75),
        (-226.08, 6805.7, 37.542, -0.060853, 1), (178.18, 383.78));

    /// <summary>Benzene.</summary>
    public static FuelComponent Benzene { get; } = Pure("benzene", (6, 6, 0),
        (1025.9, 0.26666, 562.05, 0.28394), (278.68, 562.05),
        (7.5117, 294.68, -2.794, 0, 0), (278.68, 545));

    /// <summary>Ethanol.</summary>
    public static FuelComponent Ethanol { get; } = Pure("ethanol", (2, 6, 1),
        (1628.8, 0.27469, 514, 0.23178), (159.05, 514),
        (7.875, 781.98, -3.0418, 0, 0), (200, 440));

    /// <summary>Methanol.</summary>
    public static FuelComponent Methanol { get; } = Pure("methanol", (1, 4, 1),
        (2326.7, 0.27073, 512.5, 0.24713), (175.47, 512.5),
        (-25.317, 1789.2, 2.069, 0, 0), (175.47, 337.85));

    /// <summary>MTBE (methyl tert-butyl ether).</summary>
    public static FuelComponent Mtbe { get; } = Pure("MTBE", (5, 12, 1),
        (928, 0.289, 497.1, 0.286), (164.55, 497.1),
        (-6.921, 790.773, -0.654, 0, 0), (164.55, 450));

    /// <summary>ETBE (ethyl tert-butyl ether); density and viscosity from memory.</summary>
    public static FuelComponent Etbe { get; } = new()
    {
        Name = "ETBE",
        Carbon = 6,
        Hydrogen = 14,
        Oxygen = 1,
        Density = new ExpandingLiquidDensity
        {
            DensityAtReference = 740.7,
            ExpansionPerKelvin = 1.3e-3,
            MinimumKelvin = 250,
            MaximumKelvin = 340,
            Source = "from memory",
        },
        Viscosity = new LiquidViscosity { C1 = -10.91, C2 = 950, MinimumKelvin = 250, MaximumKelvin = 340, Source = "from memory" },
    };

    /// <summary>All liquids by name.</summary>
    public static IReadOnlyList<FuelComponent> All { get; } = [Petrol, IsoOctane, Heptane, Toluene, Benzene, Ethanol, Methanol, Mtbe, Etbe];

    /// <summary>Petrol of a given hydrogen content.</summary>
    /// <remarks>
    /// Density 745 kg/m³ at 20 °C, within the 720 to 775 at 15 °C of EN 228; expansion by the generalised-gasoline correlation of
    /// API MPMS 11.1 / ASTM D1250, (346.4228 + 0.4388 ρ)/ρ² (both from memory). Viscosity 0.44 mPa s at 60 °F, the upper end of the
    /// 0.37 to 0.44 of the U.S. table of alternative-fuel properties, since stale petrol has lost its light ends; its change with temperature
    /// is that of iso-octane and n-heptane, from memory. Pump petrol scatters by a fifth about it.
    /// </remarks>
    /// <param name="hydrogenToCarbon">Atoms of hydrogen for each atom of carbon, 1.6 to 2.25.</param>
    /// <returns>The petrol.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is out of range.</exception>
    public static FuelComponent PetrolOf(double hydrogenToCarbon) => new()
    {
        Name = "petrol",
        Carbon = 1,
        Hydrogen = Precondition.Within(hydrogenToCarbon, 1.6, 2.25),
        Density = new ExpandingLiquidDensity
        {
            DensityAtReference = 745,
            ExpansionPerKelvin = 1.21e-3,
            MinimumKelvin = 250,
            MaximumKelvin = 340,
            Source = "EN 228 and API MPMS 11.1, from memory",
        },
        Viscosity = new LiquidViscosity
        {
            C1 = -11.02, // 0.44 mPa s at 288.7 K
            C2 = 950,
            MinimumKelvin = 250,
            MaximumKelvin = 340,
            Source = "U.S. table of alternative-fuel properties (0.37 to 0.44 mPa s at 60 °F); slope from memory",
        },
    };

    private static FuelComponent Pure(
        string name,
        (int Carbon, int Hydrogen, int Oxygen) atoms,
        (double C1, double C2, double C3, double C4) density,
        (double Minimum, double Maximum) densityRange,
        (double C1, double C2, double C3, double C4, double C5) viscosity,
        (double Minimum, double Maximum) viscosityRange) => new()
        {
            Name = name,
            Carbon = atoms.Carbon,
            Hydrogen = atoms.Hydrogen,
            Oxygen = atoms.Oxygen,
            Density = new SaturatedLiquidDensity
            {
                C1 = density.C1 / 1000, // given in mol/m³
                C2 = density.C2,
                CriticalKelvin = density.C3,
                C4 = density.C4,
                MolarMass = Stoichiometry.MolarMass(atoms.Carbon, atoms.Hydrogen, atoms.Oxygen),
                MinimumKelvin = densityRange.Minimum,
                MaximumKelvin = densityRange.Maximum,
                Source = DensityTable,
            },
            Viscosity = new LiquidViscosity
            {
                C1 = viscosity.C1,
                C2 = viscosity.C2,
                C3 = viscosity.C3,
                C4 = viscosity.C4,
                C5 = viscosity.C5,
                MinimumKelvin = viscosityRange.Minimum,
                MaximumKelvin = viscosityRange.Maximum,
                Source = ViscosityTable,
            },
        };
}
