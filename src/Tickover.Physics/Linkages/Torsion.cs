namespace Tickover.Physics.Linkages;

/// <summary>Wind-up of round shafts. docs/physics/linkages.md (14), (15).</summary>
/// <remarks>Saint-Venant torsion of a solid round bar within its elastic limit; the flats and slots for the plates are not taken off.</remarks>
public static class Torsion
{
    /// <summary>Polar second moment of area of a solid round bar, m⁴.</summary>
    /// <param name="diameterMetres">Diameter, m; above zero.</param>
    /// <returns>m⁴.</returns>
    public static double PolarMoment(double diameterMetres) =>
        Math.PI / 32 * Math.Pow(Precondition.Positive(diameterMetres), 4); // linkages (14)

    /// <summary>How far one end turns against the other.</summary>
    /// <param name="torqueNewtonMetres">Torque carried, N m.</param>
    /// <param name="lengthMetres">Length carrying it, m; not negative.</param>
    /// <param name="diameterMetres">Diameter, m; above zero.</param>
    /// <param name="shearModulusPascals">Shear modulus, Pa; above zero.</param>
    /// <returns>Radians.</returns>
    public static double WindUp(double torqueNewtonMetres, double lengthMetres, double diameterMetres, double shearModulusPascals) =>
        torqueNewtonMetres * Precondition.NotNegative(lengthMetres)
        / (Precondition.Positive(shearModulusPascals) * PolarMoment(diameterMetres)); // linkages (15)
}
