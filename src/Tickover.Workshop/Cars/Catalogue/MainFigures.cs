using static Tickover.Workshop.Cars.Catalogue.AirWayFigures;
using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Float chamber and main circuit.</summary>
internal static class MainFigures
{
    private const double JetStep = 0.05e-3;
    private const double LowestUsualMain = 0.7;
    private const double HighestUsualMain = 1.4;
    private const double LowestCorrectorAboveMain = -0.1e-3;
    private const double HighestCorrectorAboveMain = 1.2e-3;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } =
    [
        .. Part(
            "Float chamber",
            Of("barrel.floatLevel", "Fuel level", Measure.Length, "-5 mm", "30 mm")
                .Is("How far the fuel stands below the lip of the main nozzle, engine level and at rest.")
                .Usually("5 mm", "textbook examples have 2.8 to 8 mm")
                .Usual("2 mm", "12 mm"),
            Of("barrel.ventPressureRise", "Vent pressure", Measure.Pressure, "-2000 Pa", "2000 Pa")
                .Is("Pressure in the float chamber above that at the mouth of the trumpet; zero where the vent is inside the filter.")
                .OfTheModel(ModelDefaults.Float.VentPressureRisePascals)),
        .. Part(
            "Main circuit",
            Of("barrel.mainJet", "Main jet", Measure.JetBore, "30", "400")
                .Is("Bore of the main jet; the number on it in 1/100 mm (never a flow number).")
                .From("4 × the choke (5 × where cylinders share the barrel), to the next 5/100 mm, common practice", c => RoundTo(RuleOfThumb(c), JetStep))
                .Usual(c => new UsualBand(LowestUsualMain * RuleOfThumb(c), HighestUsualMain * RuleOfThumb(c), "the rule of thumb for this choke less 30 % to 40 % more")),
            Of("barrel.mainJetLengthRatio", "Main jet's length", Measure.Ratio, "0.5", "10")
                .Is("Length of the jet's calibrated bore over its diameter.").OfTheModel(ModelDefaults.Main.JetLengthRatio).Usual("2", "10"),
            Of("barrel.airCorrector", "Air corrector", Measure.JetBore, "0", "600")
                .Is("Bore of the air corrector in 1/100 mm; 0 for a plain nozzle without air.")
                .From("the main jet and 55 more, to the next 5/100 mm, common practice", c => RoundTo(WorkshopRules.AirCorrectorMetres(c.Si("barrel.mainJet")), JetStep))
                .Usual(c => new UsualBand(c.Si("barrel.mainJet") + LowestCorrectorAboveMain, c.Si("barrel.mainJet") + HighestCorrectorAboveMain, "some 40 to 70 above the main jet")),
            Of("barrel.mainAirDischarge", "Corrector's discharge coefficient", Measure.Ratio, "0.3", "1")
                .Is("Discharge coefficient of air corrector and emulsion holes.").OfTheModel(ModelDefaults.Main.AirDischargeCoefficient),
            Of("barrel.wellArea", "Well area", Measure.Area, "5 mm²", "500 mm²")
                .Is("Free area of the well round the emulsion tube.").OfTheModel(ModelDefaults.Main.WellAreaSquareMetres),
            Of("barrel.wellDepth", "Well depth", Measure.Length, "5 mm", "120 mm")
                .Is("Bottom of the emulsion well below the fuel level at rest.").Usually("35 mm", "measured on common wells, from memory"),
            Of("barrel.nozzle", "Nozzle", Measure.Length, "1 mm", "12 mm")
                .Is("Passage from the well to the auxiliary venturi, as the bore of the same area.")
                .Usually("3.5 mm", "from memory; the drilling in the arm of the auxiliary venturi"),
            Of("barrel.nozzleDischarge", "Nozzle discharge coefficient", Measure.Ratio, "0.2", "1")
                .Is("Discharge coefficient of the nozzle passage for the emulsion.").OfTheModel(ModelDefaults.Main.NozzleDischargeCoefficient),
            Of("barrel.slip", "Slip", Measure.Ratio, "1", "10")
                .Is("Speed of air over that of fuel in the nozzle passage; 1 is the homogeneous emulsion.").OfTheModel(ModelDefaults.Main.Slip),
            Of("barrel.columnLength", "Fuel column", Measure.Length, "1 mm", "300 mm")
                .Is("Length of the fuel column between chamber and nozzle that has to be set moving.").OfTheModel(ModelDefaults.Main.ColumnLengthMetres),
            Of("barrel.columnBore", "Column bore", Measure.Length, "1 mm", "15 mm")
                .Is("Bore of that column.").OfTheModel(ModelDefaults.Main.ColumnDiameterMetres)),
    ];

    private static double RuleOfThumb(FigureResolver figures)
    {
        var choke = figures.Si("barrel.choke");
        return figures.Place.Shared ? WorkshopRules.SharedMainJetMetres(choke) : WorkshopRules.MainJetMetres(choke);
    }
}
