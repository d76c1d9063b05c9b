using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Valves: number, size, lift and timing, as the trade gives them.</summary>
internal static class ValveFigures
{
    private const double ExhaustPerInlet = 0.85;
    private const double LiftPerDiameter = 0.25;
    private const double RadiansPerDegree = Math.PI / 180;
    private const double RadiansPerSecondPerThousandRpm = 1000 * 2 * Math.PI / 60;

    // A road camshaft's inlet opens some 25 degrees early at 5500 rpm and closes 40 degrees more than that late; a faster
    // engine has a longer camshaft. Read off common camshaft lists, rounded: a rule to start from, not a law.
    private const double EarlyDegreesPerThousandRpm = 6;
    private const double EarlyDegreesAtRest = -8;
    private const double LateOverEarlyDegrees = 40;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } =
    [
        .. Part(
            "Inlet valve",
            Of("engine.inletValves", "Inlet valves", Measure.Count, "1", "3").Is("Number of inlet valves of one cylinder.").Usually("1", "common for engines of the time"),
            Of("engine.inletValveDiameter", "Inlet valve", Measure.Length, "8 mm", "75 mm")
                .Is("Head diameter of one inlet valve.")
                .From("0.46 × the bore for one valve, 0.37 for two, 0.30 for three, common practice", c => InletPerBore(c.Si("engine.inletValves")) * c.Si("engine.bore")),
            Of("engine.inletValveLift", "Inlet lift", Measure.Length, "1 mm", "25 mm")
                .Is("Largest lift of the inlet valve, clearance taken off.")
                .From("a quarter of the valve's diameter, common practice", c => LiftPerDiameter * c.Si("engine.inletValveDiameter")),
            Of("engine.inletOpensBefore", "Inlet opens", Measure.Angle, "-40°", "100°")
                .Is("Crank angle before top dead centre at which the inlet valve leaves its seat; negative after it.")
                .From("6° for each 1000 rpm of peak power less 8°, common practice", EarlyAngle),
            Of("engine.inletClosesAfter", "Inlet closes", Measure.Angle, "0°", "130°")
                .Is("Crank angle after bottom dead centre at which the inlet valve is seated again.")
                .From("the angle at which it opens and 40° more, common practice", c => c.Si("engine.inletOpensBefore") + (LateOverEarlyDegrees * RadiansPerDegree)),
            Of("engine.inletDischarge", "Inlet discharge coefficient", Measure.Ratio, "0.3", "1")
                .Is("Discharge coefficient of the inlet valve on its curtain area.").OfTheModel(ModelDefaults.Valve.DischargeCoefficient),
            Of("engine.inletThroatRatio", "Inlet throat", Measure.Ratio, "0.6", "1")
                .Is("Throat under the inlet seat over the valve's head diameter.").OfTheModel(ModelDefaults.Valve.ThroatToHeadRatio)),
        .. Part(
            "Exhaust valve",
            Of("engine.exhaustValves", "Exhaust valves", Measure.Count, "1", "3")
                .Is("Number of exhaust valves of one cylinder.")
                .From("one, or two where there are several inlet valves", c => Math.Min(2, c.Si("engine.inletValves"))),
            Of("engine.exhaustValveDiameter", "Exhaust valve", Measure.Length, "8 mm", "75 mm")
                .Is("Head diameter of one exhaust valve.")
                .From("0.85 × the inlet valve, common practice", c => ExhaustPerInlet * c.Si("engine.inletValveDiameter")),
            Of("engine.exhaustValveLift", "Exhaust lift", Measure.Length, "1 mm", "25 mm")
                .Is("Largest lift of the exhaust valve, clearance taken off.")
                .From("a quarter of the valve's diameter, common practice", c => LiftPerDiameter * c.Si("engine.exhaustValveDiameter")),
            Of("engine.exhaustOpensBefore", "Exhaust opens", Measure.Angle, "0°", "130°")
                .Is("Crank angle before bottom dead centre at which the exhaust valve leaves its seat.")
                .From("as the inlet closes: the same cam turned round, common practice", c => c.Si("engine.inletClosesAfter")),
            Of("engine.exhaustClosesAfter", "Exhaust closes", Measure.Angle, "-40°", "100°")
                .Is("Crank angle after top dead centre at which the exhaust valve is seated again; negative before it.")
                .From("as the inlet opens, common practice", c => c.Si("engine.inletOpensBefore")),
            Of("engine.exhaustDischarge", "Exhaust discharge coefficient", Measure.Ratio, "0.3", "1")
                .Is("Discharge coefficient of the exhaust valve on its curtain area.").OfTheModel(ModelDefaults.Valve.DischargeCoefficient),
            Of("engine.exhaustThroatRatio", "Exhaust throat", Measure.Ratio, "0.6", "1")
                .Is("Throat under the exhaust seat over the valve's head diameter.").OfTheModel(ModelDefaults.Valve.ThroatToHeadRatio)),
    ];

    private static double InletPerBore(double valves) => valves switch
    {
        < 1.5 => 0.46,
        < 2.5 => 0.37,
        _ => 0.30,
    };

    private static double EarlyAngle(FigureResolver figures)
    {
        var thousandRpm = figures.Si("engine.peakPowerSpeed") / RadiansPerSecondPerThousandRpm;
        return ((EarlyDegreesPerThousandRpm * thousandRpm) + EarlyDegreesAtRest) * RadiansPerDegree;
    }
}
