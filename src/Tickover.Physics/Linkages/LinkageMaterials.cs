namespace Tickover.Physics.Linkages;

/// <summary>Handbook figures of the metals linkages and manifolds are made of, at room temperature.</summary>
/// <remarks>
/// From memory, as printed alike in the usual tables (Gere and Timoshenko, <i>Mechanics of Materials</i>, appendix H; CRC Handbook).
/// Alloys differ by some 3 % in stiffness and 10 % in expansion.
/// </remarks>
public static class LinkageMaterials
{
    /// <summary>Shear modulus of steel, Pa.</summary>
    public const double SteelShearModulusPascals = 79.3e9;

    /// <summary>Shear modulus of brass, Pa.</summary>
    public const double BrassShearModulusPascals = 37e9;

    /// <summary>Linear expansion of aluminium, 1/K.</summary>
    public const double AluminiumExpansionPerKelvin = 23.1e-6;

    /// <summary>Linear expansion of steel, 1/K.</summary>
    public const double SteelExpansionPerKelvin = 11.7e-6;

    /// <summary>How far a point of a warm body moves away from one that stays.</summary>
    /// <param name="fromStaying">The way from the point that stays, m.</param>
    /// <param name="expansionPerKelvin">Linear expansion, 1/K.</param>
    /// <param name="riseKelvins">Rise of temperature, K.</param>
    /// <returns>The move, m.</returns>
    public static SpaceVector Growth(SpaceVector fromStaying, double expansionPerKelvin, double riseKelvins) =>
        Precondition.Finite(expansionPerKelvin * riseKelvins) * fromStaying; // linkages (16)
}
