using Tickover.Physics.Air;
using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>The day and the place.</summary>
internal static class AmbientFigures
{
    public static IReadOnlyList<CatalogueEntry> Entries { get; } = Part(
        "Day and place",
        Of("ambient.altitude", "Altitude", Measure.Altitude, "-500 m", "5000 m")
            .Is("Height above the sea; sets the pressure where no barometer was read.").Assumed("0 m", "sea level"),
        Of("ambient.pressure", "Barometer", Measure.Pressure, "450 hPa", "1090 hPa")
            .Is("Absolute pressure where the engine runs (not reduced to sea level).")
            .From("the standard atmosphere's pressure at the altitude (ISO 2533)", c => StandardAtmosphere.PressurePascals(StandardAtmosphere.GeopotentialFromGeometric(c.Si("ambient.altitude")))),
        Of("ambient.temperature", "Air temperature", Measure.Temperature, "-40 °C", "60 °C")
            .Is("Temperature of the air the engine draws.").Assumed("15 °C", "the standard day"),
        Of("ambient.humidity", "Humidity", Measure.Percent, "0 %", "100 %")
            .Is("Relative humidity of the air.").Assumed("60 %", "a fair day"),
        Of("ambient.fuelTemperature", "Fuel temperature", Measure.Temperature, "-40 °C", "80 °C")
            .Is("Temperature of the fuel in the float chamber.")
            .From("as the air", c => c.Si("ambient.temperature")));
}
