using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>The air way of a barrel.</summary>
internal static class AirWayFigures
{
    private const double WholeMillimetre = 1e-3;
    private const double SpindlePerBore = 0.2;
    private const double WidestChokePerBore = 0.9;
    private const double NarrowestUsualChoke = 0.62;
    private const double WidestUsualChoke = 0.92;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } =
    [
        .. Part(
            "Throttle",
            Of("barrel.throttleBore", "Throttle bore", Measure.Length, "12 mm", "90 mm")
                .Is("Bore of the barrel at the throttle plate; the size a carburettor is sold by.")
                .From("the choke over 0.8, to the next millimetre, common practice", c => RoundTo(WorkshopRules.ThrottleBoreMetres(c.Si("barrel.choke")), WholeMillimetre)),
            Of("barrel.closedAngle", "Closed angle", Measure.Angle, "0°", "25°")
                .Is("Angle of the seated plate from the plane square to the bore; often stamped on the plate as 90° less this.")
                .Usually("8°", "common for twin-barrel carburettors"),
            Of("barrel.spindleDiameter", "Throttle spindle", Measure.Length, "2 mm", "20 mm")
                .Is("Diameter of the throttle spindle.")
                .From("0.2 × the throttle bore, common practice", c => SpindlePerBore * c.Si("barrel.throttleBore")),
            Of("barrel.plateDischarge", "Plate discharge coefficient", Measure.Ratio, "0.3", "1")
                .Is("Discharge coefficient of the gap round the plate.").OfTheModel(ModelDefaults.AirWay.PlateDischargeCoefficient),
            Of("barrel.bypassArea", "By-pass area", Measure.Area, "0 mm²", "30 mm²")
                .Is("Free area of the air by-pass round the shut plate.").OfTheModel(ModelDefaults.AirWay.BypassAreaSquareMetres)),
        .. Part(
            "Choke and auxiliary venturi",
            Of("barrel.choke", "Choke", Measure.Length, "8 mm", "80 mm")
                .Is("Throat of the main venturi; the number cast or stamped on it, in mm.")
                .From("20 × √(litres a cylinder × thousands of rpm at peak power) mm, less for shared barrels, to the millimetre; at most 0.9 × a throttle bore that is given; common practice", Choke)
                .Usual(c => new UsualBand(NarrowestUsualChoke * c.Si("barrel.throttleBore"), WidestUsualChoke * c.Si("barrel.throttleBore"), "some 0.75 to 0.85 of the throttle bore")),
            Of("barrel.chokeDischarge", "Choke discharge coefficient", Measure.Ratio, "0.5", "1")
                .Is("Discharge coefficient of the choke on its free area.").OfTheModel(ModelDefaults.AirWay.ChokeDischargeCoefficient),
            Of("barrel.chokeLoss", "Choke loss", Measure.Ratio, "0", "3")
                .Is("Pressure loss of choke and auxiliary venturi in velocity heads of the free throat.").OfTheModel(ModelDefaults.AirWay.ChokeLossCoefficient),
            Of("barrel.chokeObstruction", "Taken by the auxiliary venturi", Measure.Percent, "0 %", "60 %")
                .Is("Part of the choke's area that the body of the auxiliary venturi takes.").OfTheModel(ModelDefaults.AirWay.ChokeObstruction),
            Of("barrel.auxiliaryGain", "Auxiliary venturi's gain", Measure.Ratio, "1", "6")
                .Is("Depression in the auxiliary venturi over that in the choke.").OfTheModel(ModelDefaults.AirWay.AuxiliaryVenturiGain),
            Of("barrel.reverseSignal", "Signal of reverse flow", Measure.Percent, "0 %", "100 %")
                .Is("Part of the forward signal that the same flow gives backwards.").OfTheModel(ModelDefaults.AirWay.ReverseSignalFactor)),
    ];

    /// <summary>Rounds to the trade's steps.</summary>
    /// <param name="value">The value.</param>
    /// <param name="step">The step, same unit.</param>
    /// <returns>The nearest step.</returns>
    public static double RoundTo(double value, double step) => Math.Round(value / step, MidpointRounding.AwayFromZero) * step;

    private static double Choke(FigureResolver figures)
    {
        var ownCylinder = WorkshopRules.ChokeMetres(EngineFigures.SweptVolume(figures), figures.Si("engine.peakPowerSpeed"));
        var place = figures.Place;
        var wanted = place.Shared ? ownCylinder * WorkshopRules.SharedChokeFactor(place.Barrels, place.Cylinders) : ownCylinder;

        // The bore's own default rests on the choke, so that it limits the choke only where the document gives it.
        var widest = figures.IsGiven("barrel.throttleBore") ? WidestChokePerBore * figures.Si("barrel.throttleBore") : wanted;
        return RoundTo(Math.Min(wanted, widest), WholeMillimetre);
    }
}
