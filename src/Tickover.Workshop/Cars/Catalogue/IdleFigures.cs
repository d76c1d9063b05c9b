using static Tickover.Workshop.Cars.Catalogue.AirWayFigures;
using static Tickover.Workshop.Cars.Catalogue.FigureRow;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>Idle and progression circuit.</summary>
internal static class IdleFigures
{
    private const double JetStep = 0.05e-3;

    public static IReadOnlyList<CatalogueEntry> Entries { get; } = Part(
        "Idle and progression",
        Of("barrel.idleJet", "Idle jet", Measure.JetBore, "15", "200")
            .Is("Bore of the idle jet in 1/100 mm.")
            .From("50 for 400 cm³ that the barrel serves, growing with the cube root, to the next 5/100 mm, common practice", IdleJet)
            .Usual("30", "90"),
        Of("barrel.idleJetLengthRatio", "Idle jet's length", Measure.Ratio, "0.5", "10")
            .Is("Length of the jet's calibrated bore over its diameter.").OfTheModel(ModelDefaults.Idle.JetLengthRatio).Usual("2", "10"),
        Of("barrel.idleBleed", "Idle air bleed", Measure.JetBore, "0", "400")
            .Is("Bore of the idle circuit's air bleed in 1/100 mm.").Usually("120", "from memory; read it off the part"),
        Of("barrel.idleAirDischarge", "Idle bleed's discharge coefficient", Measure.Ratio, "0.3", "1")
            .Is("Discharge coefficient of the bleed and of the holes for air.").OfTheModel(ModelDefaults.Idle.AirDischargeCoefficient),
        Of("barrel.idleLift", "Idle lift", Measure.Length, "0 mm", "80 mm")
            .Is("Top of the idle passage above the fuel level.").OfTheModel(ModelDefaults.Idle.LiftMetres),
        Of("barrel.idleFeedShare", "Idle jet fed from the main well", Measure.Percent, "0 %", "100 %")
            .Is("Part of the main jet's mean pressure drop that the idle jet feels: 100 % where it draws from the main well, 0 % where it draws from the chamber.")
            .OfTheModel(ModelDefaults.Idle.MainWellShare),
        Of("barrel.screwSeat", "Mixture screw's seat", Measure.Length, "0.4 mm", "5 mm")
            .Is("Bore of the seat under the mixture screw.").Usually("1.2 mm", "from memory; measure it with a drill's shank"),
        Of("barrel.screwConeAngle", "Mixture screw's cone", Measure.Angle, "4°", "90°")
            .Is("Included angle of the cone of the mixture screw.").OfTheModel(2 * ModelDefaults.Idle.ScrewHalfAngleRadians),
        Of("barrel.screwPitch", "Mixture screw's pitch", Measure.Length, "0.2 mm", "2 mm")
            .Is("Lift of the mixture screw a turn.").OfTheModel(ModelDefaults.Idle.ScrewPitchMetres),
        Of("barrel.screwTurns", "Mixture screw", Measure.Turns, "0", "10")
            .Is("Turns out from lightly seated.").Usually("1.5", "a common first setting").Usual("0.5", "5"),
        Of("barrel.outletDischarge", "Outlet discharge coefficient", Measure.Ratio, "0.2", "1")
            .Is("Discharge coefficient of screw port and progression holes for the emulsion.").OfTheModel(ModelDefaults.Idle.OutletDischargeCoefficient));

    private static double IdleJet(FigureResolver figures)
    {
        var place = figures.Place;
        var served = EngineFigures.SweptVolume(figures) * place.Cylinders / place.Barrels;
        return RoundTo(WorkshopRules.IdleJetMetresFor(served), JetStep);
    }
}
