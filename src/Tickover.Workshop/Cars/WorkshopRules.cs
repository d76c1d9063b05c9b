namespace Tickover.Workshop.Cars;

/// <summary>The trade's rules of thumb for a first build: a starting point, never an answer.</summary>
/// <remarks>
/// Common practice for engines with one barrel on each cylinder, except where a method says otherwise. None of them
/// comes from a standard; the mixture map exists because they are only roughly right.
/// </remarks>
public static class WorkshopRules
{
    private const double CubicMetresPerLitre = 1e-3;
    private const double MetresPerMillimetre = 1e-3;
    private const double RadiansPerSecondPerThousandRpm = 1000 * 2 * Math.PI / 60;

    /// <summary>Choke in mm for one litre a cylinder at 1000 rpm.</summary>
    private const double ChokeFactorMillimetres = 20;

    /// <summary>Main jet over choke: a choke of 32 mm takes a jet of some 1.28 mm.</summary>
    private const double MainJetPerChoke = 4e-2;

    /// <summary>The same where cylinders share the barrel: the flow is smoother and draws less fuel for its mean.</summary>
    private const double SharedMainJetPerChoke = 5e-2;

    private const double CorrectorAboveMainMetres = 0.55e-3;

    /// <summary>A choke takes some four fifths of the barrel's bore.</summary>
    private const double ChokePerThrottleBore = 0.8;

    private const double IdleJetMetres = 0.50e-3;
    private const double IdleJetCylinderCubicMetres = 400e-6;
    private const double IdleJetExponent = 1.0 / 3;

    /// <summary>Cylinders up to which only one draws at a time.</summary>
    private const double CylindersDrawingInTurn = 4;

    /// <summary>A shared barrel is made some fifth wider than its part of the peak flow asks, for its mean flow is larger.</summary>
    private const double SharedChokeAllowance = 1.2;

    /// <summary>Choke for a barrel: 20 mm times the root of litres a cylinder times thousands of rpm at peak power.</summary>
    /// <param name="sweptCubicMetres">Swept volume of one cylinder, m³.</param>
    /// <param name="peakPowerRadiansPerSecond">Speed at peak power, rad/s.</param>
    /// <returns>Choke diameter, m, not rounded.</returns>
    public static double ChokeMetres(double sweptCubicMetres, double peakPowerRadiansPerSecond)
    {
        var litres = sweptCubicMetres / CubicMetresPerLitre;
        var thousandRpm = peakPowerRadiansPerSecond / RadiansPerSecondPerThousandRpm;
        return ChokeFactorMillimetres * Math.Sqrt(litres * thousandRpm) * MetresPerMillimetre;
    }

    /// <summary>What the choke of one cylinder's own barrel is multiplied with where barrels share cylinders.</summary>
    /// <param name="barrels">Barrels that feed the shared volume.</param>
    /// <param name="cylinders">Cylinders that draw from it.</param>
    /// <returns>Factor on the choke, 1.</returns>
    public static double SharedChokeFactor(int barrels, int cylinders)
    {
        var drawingAtOnce = Math.Max(1, cylinders / CylindersDrawingInTurn);
        var allowance = barrels > 1 ? SharedChokeAllowance : 1;
        return allowance * Math.Sqrt(drawingAtOnce / barrels);
    }

    /// <summary>Throttle bore that goes with a choke: choke over 0.8.</summary>
    /// <param name="chokeMetres">Choke, m.</param>
    /// <returns>Bore, m.</returns>
    public static double ThrottleBoreMetres(double chokeMetres) => chokeMetres / ChokePerThrottleBore;

    /// <summary>Main jet of a barrel with its own cylinder: in 1/100 mm, four times the choke in mm.</summary>
    /// <param name="chokeMetres">Choke, m.</param>
    /// <returns>Bore of the jet, m.</returns>
    public static double MainJetMetres(double chokeMetres) => MainJetPerChoke * chokeMetres;

    /// <summary>Main jet of a barrel that several cylinders share: five hundredths of the choke.</summary>
    /// <param name="chokeMetres">Choke, m.</param>
    /// <returns>Bore of the jet, m.</returns>
    public static double SharedMainJetMetres(double chokeMetres) => SharedMainJetPerChoke * chokeMetres;

    /// <summary>Air corrector: 55 numbers above the main jet.</summary>
    /// <param name="mainJetMetres">Main jet, m.</param>
    /// <returns>Bore of the corrector, m.</returns>
    public static double AirCorrectorMetres(double mainJetMetres) => mainJetMetres + CorrectorAboveMainMetres;

    /// <summary>Idle jet: 50 for 400 cm³ a barrel, growing with the cube root.</summary>
    /// <param name="sweptCubicMetres">Swept volume the barrel serves, m³.</param>
    /// <returns>Bore of the jet, m.</returns>
    public static double IdleJetMetresFor(double sweptCubicMetres) =>
        IdleJetMetres * Math.Pow(sweptCubicMetres / IdleJetCylinderCubicMetres, IdleJetExponent);
}
