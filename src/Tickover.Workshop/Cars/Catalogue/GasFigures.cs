using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>The inlet tract, the exhaust and the heat release.</summary>
internal static class GasFigures
{
    private const double RadiansPerDegree = Math.PI / 180;
    private const double RunnerPerValve = 0.9;
    private const double PlateToFaceMetres = 0.02;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } =
    [
        .. Part(
            "Inlet tract",
            Of("engine.trumpetLength", "Trumpet", Measure.Length, "0 mm", "600 mm")
                .Is("From the trumpet's mouth to the throat of the choke.")
                .Usually("80 mm", "a short trumpet and the upper half of the barrel"),
            Of("engine.barrelLength", "Barrel below the choke", Measure.Length, "10 mm", "200 mm")
                .Is("From the throat of the choke to the face of the manifold.")
                .Usually("60 mm", "common for twin-barrel carburettors"),
            Of("engine.runnerLength", "Runner and port", Measure.Length, "20 mm", "800 mm")
                .Is("From the face of the carburettor, or from the shared volume, along the middle of runner and port to the valve.")
                .From("150 mm, or 250 mm from a shared manifold, common practice", c => c.Place.Shared ? 0.25 : 0.15),
            Of("engine.runnerBore", "Runner bore", Measure.Length, "10 mm", "80 mm")
                .Is("Mean bore of runner and port.")
                .From("0.9 × the bore with the area of all inlet valves, common practice", c => RunnerPerValve * c.Si("engine.inletValveDiameter") * Math.Sqrt(c.Si("engine.inletValves"))),
            Of("engine.portVolume", "Port volume", Measure.Volume, "5 cm³", "3000 cm³")
                .Is("Volume between the throttle plate (or the shared volume) and the valve of one cylinder.")
                .From("half the runner's volume (the other half moves with the air column), and 20 mm more up to the plate where no volume is shared", PortVolume),
            Of("engine.runnerLoss", "Runner loss", Measure.Ratio, "0", "5")
                .Is("Pressure loss of runner and entry in velocity heads.").OfTheModel(ModelDefaults.Intake.RunnerLossCoefficient),
            Of("engine.sharedVolume", "Shared volume", Measure.Volume, "0 cm³", "20000 cm³")
                .Is("Volume between the throttle plates and the runners where barrels share a manifold; unused elsewhere.")
                .From("1.2 × the swept volume of one cylinder where a manifold is shared, else none, common practice", SharedVolume),
            Of("engine.portWallTemperature", "Port wall", Measure.Temperature, "-30 °C", "200 °C")
                .Is("Temperature of the walls of the port.").OfTheModel(ModelDefaults.Intake.WallTemperatureKelvin),
            Of("engine.inletHeating", "Taken up from the port wall", Measure.Percent, "0 %", "100 %")
                .Is("Part of the difference between wall and ambient that the charge takes up on its way in.").OfTheModel(ModelDefaults.Intake.HeatingEffectiveness),
            Of("engine.evaporationCooling", "Cooling by evaporation", Measure.TemperatureDifference, "0 K", "60 K")
                .Is("Drop of the charge's temperature by fuel that evaporates on the way in.").OfTheModel(ModelDefaults.Intake.EvaporationCoolingKelvin)),
        .. Part(
            "Exhaust",
            Of("engine.exhaustBackPressure", "Back-pressure", Measure.Pressure, "0 Pa", "1 bar")
                .Is("Pressure above ambient at the manifold, at peak power and full throttle.")
                .Usually("150 hPa", "a sound road exhaust with two boxes"),
            Of("engine.exhaustGasTemperature", "Exhaust gas", Measure.Temperature, "100 °C", "1200 °C")
                .Is("Temperature of the gas standing in the exhaust.").OfTheModel(ModelDefaults.Exhaust.GasTemperatureKelvin)),
        .. Part(
            "Burning",
            Of("engine.burnStartsBefore", "Burning starts", Measure.Angle, "-30°", "60°")
                .Is("Crank angle before top dead centre at which heat is released first.")
                .OfTheModel(-ModelDefaults.Combustion.StartDegrees * RadiansPerDegree),
            Of("engine.burnDuration", "Burning lasts", Measure.Angle, "10°", "150°")
                .Is("Crank angle over which heat is released.").OfTheModel(ModelDefaults.Combustion.DurationDegrees * RadiansPerDegree),
            Of("engine.heatPerAir", "Heat for each kilogram of air", Measure.Heat, "1 MJ/kg", "3.5 MJ/kg")
                .Is("Heat released by each kilogram of fresh air trapped.").OfTheModel(ModelDefaults.Combustion.HeatPerAirJoulesPerKilogram),
            Of("engine.chamberWallTemperature", "Chamber wall", Measure.Temperature, "50 °C", "400 °C")
                .Is("Temperature of chamber, liner and piston crown.").OfTheModel(ModelDefaults.Combustion.WallTemperatureKelvin)),
    ];

    private static double PortVolume(FigureResolver figures)
    {
        var area = Math.PI / 4 * Math.Pow(figures.Si("engine.runnerBore"), 2);
        var toPlate = figures.Place.Shared ? 0 : PlateToFaceMetres;
        return area * (figures.Si("engine.runnerLength") / 2 + toPlate);
    }

    private static double SharedVolume(FigureResolver figures)
    {
        const double SharedPerSwept = 1.2;
        return figures.Place.Shared ? SharedPerSwept * EngineFigures.SweptVolume(figures) : 0;
    }
}
