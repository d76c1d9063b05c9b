using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Accelerator pump, as far as steady running feels it.</summary>
internal static class PumpFigures
{
    public static IReadOnlyList<CatalogueEntry> Entries { get; } = Part(
        "Accelerator pump",
        Of("barrel.pumpJet", "Pump jet", Measure.JetBore, "0", "200")
            .Is("Bore of the pump jet in 1/100 mm; 0 where the barrel has none.").Usually("45", "common practice").Usual("0", "100"),
        Of("barrel.pumpBackBleed", "Pump back-bleed", Measure.JetBore, "0", "200")
            .Is("Bore of the back-bleed in 1/100 mm; 0 where it is closed.").OfTheModel(ModelDefaults.Pump.BleedDiameterMetres),
        Of("barrel.pumpLift", "Pump nozzle's height", Measure.Length, "0 mm", "100 mm")
            .Is("Height of the pump nozzle above the fuel level.").OfTheModel(ModelDefaults.Pump.LiftMetres),
        Of("barrel.pumpCheckOpening", "Delivery valve", Measure.Pressure, "0 Pa", "5000 Pa")
            .Is("Depression that lifts the delivery valve.").OfTheModel(ModelDefaults.Pump.CheckOpeningPascals));
}
