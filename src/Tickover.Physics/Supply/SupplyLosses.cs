namespace Tickover.Physics.Supply;

/// <summary>Usual losses of what a fuel line is made of, in velocity heads of its own bore, and other handbook figures.</summary>
/// <remarks>
/// Handbook values (Crane TP-410M; I. E. Idelchik, Handbook of Hydraulic Resistance), from memory, for turbulent flow; at the low speeds
/// of an idling engine fittings lose more, of a pressure that does not matter there.
/// </remarks>
public static class SupplyLosses
{
    /// <summary>Sharp-edged entry, 1.</summary>
    public const double SharpEntry = 0.5;

    /// <summary>Entry into a tube that stands out into the tank, as a pick-up does, 1.</summary>
    public const double StandingEntry = 0.8;

    /// <summary>Exit into a wide space, 1.</summary>
    public const double Exit = 1.0;

    /// <summary>Bend through a right angle, radius about one bore, 1.</summary>
    public const double RightAngleBend = 0.6;

    /// <summary>Banjo union, 1; 2 to 4.</summary>
    public const double Banjo = 3.0;

    /// <summary>Tap wide open, straight way, 1.</summary>
    public const double OpenTap = 0.5;

    /// <summary>Tee, straight through, 1.</summary>
    public const double TeeRun = 0.6;

    /// <summary>Tee, into or out of the branch, 1.</summary>
    public const double TeeBranch = 1.8;

    /// <summary>Roughness of drawn tube and of hose, m.</summary>
    public const double DrawnTubeRoughnessMetres = 1.5e-6;

    /// <summary>Heat through a square metre of a line's outside for each kelvin, W/(m² K): still air 10, under a bonnet in motion 25.</summary>
    public const double HeatPerSquareMetreKelvin = 15;

    /// <summary>Specific heat of petrol, J/(kg K).</summary>
    public const double PetrolSpecificHeat = 2200;

    /// <summary>Heat a bare round line takes in, W/K.</summary>
    /// <param name="outerDiameterMetres">Outside diameter, m.</param>
    /// <param name="lengthMetres">Length, m.</param>
    /// <returns>W/K.</returns>
    public static double HeatTaken(double outerDiameterMetres, double lengthMetres) =>
        HeatPerSquareMetreKelvin * Math.PI * outerDiameterMetres * lengthMetres;
}
