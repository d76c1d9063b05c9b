using Tickover.Physics.Breathing;
using Tickover.Physics.Flow;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;
using static Tickover.Workshop.Mixture.WorkingNumber;

namespace Tickover.Workshop.Mixture;

/// <summary>Writes the working of one point from the air to λ: every figure with its formula, its numbers and where they come from.</summary>
internal sealed class WorkingSteps(
    Car car, SurveyModel model, AirSide air, int barrelInGroup, int barrelNumber, FuelPoint fuel, BarrelPoint point)
{
    private const double StandardGravity = 9.80665;

    private readonly CarBarrel _barrel = car.Barrels[barrelNumber - 1];
    private readonly BarrelSpec _spec = model.Engine.Barrels[barrelNumber - 1];
    private readonly double _rpm = air.Grid.SpeedsRpm[0];
    private readonly double _degrees = air.Grid.ThrottleDegrees[0];

    private double Opening => _degrees * Math.PI / 180;

    private double BarrelAir => air.At(0, 0).AirKilogramsPerCycle[barrelInGroup] * _rpm / 120;

    internal IReadOnlyList<WorkingStep> All() =>
    [
        Air(), Gap(), Choke(), Signal(), MainHead(), Well(), MainFuel(), Edge(), IdleFuel(), Pump(), Total(), Lambda(),
    ];

    private Figure E(string key) => car.Engine["engine." + key];

    private Figure B(string key) => _barrel.Figures["barrel." + key];

    private WorkingStep Air()
    {
        var cylinders = air.Group.Cylinders.Count / (double)air.Group.Barrels.Count;
        var swept = air.Engine.Cylinder.SweptVolumeCubicMetres;
        return new WorkingStep
        {
            Title = "Air through the barrel",
            Formula = "air = filling × swept volume × density × rpm ÷ 120",
            NumbersIn = $"{Percent(point.VolumetricEfficiency)} × {Fixed(cylinders, cylinders % 1 == 0 ? 0 : 1)} × {Volume(swept)} × "
                + $"{Density(model.Ambient.DensityKilogramsPerCubicMetre)} × {Rpm(_rpm)} ÷ 120",
            Answer = PerHour(BarrelAir),
            Equation = "breathing (20)",
            Inputs = [E("bore"), E("stroke"), E("inletValveDiameter"), E("inletValveLift"), E("inletClosesAfter"), car.Ambient["ambient.pressure"], car.Ambient["ambient.temperature"]],
            Note = "The filling comes out of the gas exchange, integrated by crank angle until each cycle repeats the last; "
                + $"{Percent(point.BackflowFraction)} of what goes in comes back out of the barrel.",
        };
    }

    private WorkingStep Gap()
    {
        var area = BarrelFlow.PlateArea(_spec.AirWay, Opening);
        return new WorkingStep
        {
            Title = "Gap at the throttle plate",
            Formula = "gap = bore area × open part at this angle, less the spindle",
            NumbersIn = $"bore {Millimetres(_spec.AirWay.ThrottleBoreMetres)}, seated at {Degrees(_spec.AirWay.ClosedAngleRadians * 180 / Math.PI)}, "
                + $"opened by {Degrees(_degrees)}, spindle {Millimetres(_spec.AirWay.SpindleDiameterMetres)}",
            Answer = SquareMillimetres(area),
            Equation = "flow (16)",
            Inputs = [B("throttleBore"), B("closedAngle"), B("spindleDiameter"), B("plateDischarge"), B("bypassArea")],
            Note = $"Mean pressure behind the plate {Pascals(point.ManifoldPressurePascals)}.",
        };
    }

    private WorkingStep Choke()
    {
        var area = BarrelFlow.ChokeArea(_spec.AirWay);
        var speed = BarrelAir / (model.Ambient.DensityKilogramsPerCubicMetre * area);
        return new WorkingStep
        {
            Title = "Air speed in the choke, mean over the cycle",
            Formula = "speed = air ÷ (density × free choke area)",
            NumbersIn = $"{GramsPerSecond(BarrelAir)} ÷ ({Density(model.Ambient.DensityKilogramsPerCubicMetre)} × {SquareMillimetres(area)})",
            Answer = Fixed(speed, 1) + "\u2009m/s",
            Equation = "breathing (7)",
            Inputs = [B("choke"), B("chokeObstruction"), B("chokeDischarge")],
            Note = $"The air comes in pulses: {GramsPerSecond(fuel.PeakAirKilogramsPerSecond)} at the peak.",
        };
    }

    private WorkingStep Signal()
    {
        var choke = BarrelFlow.ChokeArea(_spec.AirWay) * _spec.AirWay.ChokeDischargeCoefficient;
        var steady = IncompressibleSuction(choke) * _spec.AirWay.AuxiliaryVenturiGain;
        var pulses = steady > 0 ? fuel.MeanDepressionPascals / steady : 0;
        return new WorkingStep
        {
            Title = "Depression in the auxiliary venturi",
            Formula = "depression = gain × pulses × (air ÷ (Cd × area))² ÷ (2 × density)",
            NumbersIn = $"{Fixed(_spec.AirWay.AuxiliaryVenturiGain, 1)} × {Fixed(pulses, 2)} × ({GramsPerSecond(BarrelAir)} ÷ {SquareMillimetres(choke)})² "
                + $"÷ (2 × {Density(model.Ambient.DensityKilogramsPerCubicMetre)})",
            Answer = $"{Pascals(fuel.MeanDepressionPascals)} mean, {Pascals(fuel.PeakDepressionPascals)} peak",
            Equation = "breathing (17)",
            Inputs = [B("auxiliaryGain"), B("reverseSignal"), B("choke")],
            Note = "'Pulses' is how much more the pulsing air draws than the same air flowing steadily; it is computed, not assumed.",
        };
    }

    private double IncompressibleSuction(double effectiveArea) =>
        BarrelAir * BarrelAir / (2 * model.Ambient.DensityKilogramsPerCubicMetre * effectiveArea * effectiveArea);

    private WorkingStep MainHead()
    {
        var lip = _spec.Float.LipHeightMetres * model.Fuel.DensityKilogramsPerCubicMetre * StandardGravity;
        return new WorkingStep
        {
            Title = "Head to be lifted before the main circuit starts",
            Formula = "head = lip above the level × fuel density × g + what the idle circuit's fuel takes at the main jet",
            NumbersIn = $"{Millimetres(_spec.Float.LipHeightMetres)} × {Density(model.Fuel.DensityKilogramsPerCubicMetre)} × 9.81\u2009m/s² + "
                + Pascals(fuel.IdleDropPascals),
            Answer = Pascals(lip + fuel.IdleDropPascals),
            Equation = "metering (3), (28)",
            Inputs = [B("floatLevel"), B("mainJet"), B("idleFeedShare"), car.Ambient["ambient.fuelTemperature"]],
            Note = "Set against the depression above: the float level matters where the two are of a size, and fuel on its way to the idle jet "
                + "holds the main circuit back.",
        };
    }

    private WorkingStep Well() => new()
    {
        Title = "Fuel in the emulsion tube, and air through the corrector",
        Formula = "the level falls until the uncovered holes pass what the corrector lets in",
        NumbersIn = $"corrector {Millimetres(_spec.Main.AirCorrectorDiameterMetres)}, {RowsUncovered()} of {_spec.Main.HoleRows.Count} rows uncovered at "
            + $"{Millimetres(fuel.LevelDropMetres)} below rest",
        Answer = PerHour(fuel.CorrectorAirKilogramsPerSecond) + " of air",
        Equation = "metering (10)",
        Inputs = [B("airCorrector"), B("wellDepth"), B("wellArea"), B("mainAirDischarge")],
        Note = "Emulsion holes: " + _barrel.EmulsionHolesOrigin.Note,
    };

    private int RowsUncovered() => _spec.Main.HoleRows.Count(r => fuel.LevelDropMetres > r.DepthMetres);

    private WorkingStep MainFuel()
    {
        var area = Circle.Area(_spec.Main.JetDiameterMetres);
        var density = model.Fuel.DensityKilogramsPerCubicMetre;
        var plain = JetDischargeOnMean(area, density);
        return new WorkingStep
        {
            Title = "Fuel from the main nozzle",
            Formula = "fuel = mean over the cycle of Cd × jet area × √(2 × density × drop at the jet)",
            NumbersIn = $"jet {Millimetres(_spec.Main.JetDiameterMetres)}; a plain jet on the mean depression would give {PerHour(plain)} besides the idle circuit's",
            Answer = PerHour(point.MainFuelKilogramsPerSecond),
            Equation = "metering (4)",
            Inputs = [B("mainJet"), B("mainJetLengthRatio"), B("nozzle"), B("columnLength"), B("columnBore"), B("slip")],
            Note = "What the corrector's air and the nozzle take from the depression is already off; the fuel column's inertia smooths the pulses.",
        };
    }

    private double JetDischargeOnMean(double area, double density)
    {
        const double attached = 0.80;   // Cd of a short jet at full flow, reference row L/D 3
        var drop = fuel.MeanDepressionPascals - _spec.Float.LipHeightMetres * density * StandardGravity;
        var idle = (point.IdleFuelKilogramsPerSecond + point.ProgressionFuelKilogramsPerSecond) * _spec.Idle.MainWellShare;
        return drop > 0 ? Math.Max(0, attached * area * Math.Sqrt(2 * density * drop) - idle) : 0;
    }

    private WorkingStep Edge()
    {
        var split = PlateEdge.Split(_spec.Idle, _spec.AirWay, Opening);
        return new WorkingStep
        {
            Title = "Progression holes behind the plate's edge",
            Formula = "area behind = holes that the edge has passed; the rest let air in",
            NumbersIn = $"edge {Millimetres(PlateEdge.Travel(_spec.AirWay, Opening))} up the bore, {_spec.Idle.ProgressionHoles.Count} holes",
            Answer = $"{SquareMillimetres(split.BehindSquareMetres)} feed, {SquareMillimetres(split.BeforeSquareMetres)} bleed",
            Equation = "metering (14)",
            Inputs = [B("throttleBore"), B("closedAngle")],
            Note = "Progression holes: " + _barrel.ProgressionHolesOrigin.Note,
        };
    }

    private WorkingStep IdleFuel()
    {
        var screw = PlateEdge.ScrewArea(_spec.Idle);
        return new WorkingStep
        {
            Title = "Fuel of the idle circuit",
            Formula = "what the idle jet gives against bleed, mixture screw and holes at the pressures on both sides of the plate",
            NumbersIn = $"jet {Millimetres(_spec.Idle.JetDiameterMetres)}, bleed {Millimetres(_spec.Idle.BleedDiameterMetres)}, "
                + $"screw {Fixed(_spec.Idle.ScrewTurns, 2)} turns = {SquareMillimetres(screw)}",
            Answer = $"{PerHour(point.IdleFuelKilogramsPerSecond)} past the screw, {PerHour(point.ProgressionFuelKilogramsPerSecond)} from the holes",
            Equation = "metering (17)",
            Inputs = [B("idleJet"), B("idleBleed"), B("screwTurns"), B("screwSeat"), B("screwConeAngle"), B("idleFeedShare")],
        };
    }

    private WorkingStep Pump() => new()
    {
        Title = "Pulled over at the pump jet",
        Formula = "as a jet on the air's velocity head, once it lifts the fuel and the delivery valve",
        NumbersIn = _spec.Pump is null ? "no pump jet" : $"jet {Millimetres(_spec.Pump.JetDiameterMetres)}, delivery valve {Pascals(_spec.Pump.CheckOpeningPascals)}",
        Answer = PerHour(point.PumpFuelKilogramsPerSecond),
        Equation = "metering (19)",
        Inputs = [B("pumpJet"), B("pumpLift"), B("pumpCheckOpening"), B("pumpBackBleed")],
    };

    private WorkingStep Total() => new()
    {
        Title = "Air/fuel ratio",
        Formula = "AFR = all air ÷ all fuel",
        NumbersIn = $"({PerHour(BarrelAir)} + {PerHour(fuel.BledAirKilogramsPerSecond)} through bleeds) ÷ {PerHour(point.FuelKilogramsPerSecond)}",
        Answer = point.AirFuelRatio > 0 ? Fixed(point.AirFuelRatio, 1) : "no fuel flows: no ratio",
        Equation = "metering (20)",
        Inputs = [],
    };

    private WorkingStep Lambda() => new()
    {
        Title = "Lambda",
        Formula = "λ = AFR × dry part of the air ÷ air the fuel needs",
        NumbersIn = $"{Fixed(point.AirFuelRatio, 1)} × {Fixed(model.Ambient.DryAirFraction, 3)} ÷ {Fixed(model.Fuel.StoichiometricRatio, 2)}",
        Answer = point.Lambda > 0 ? Fixed(point.Lambda, 2) : "no fuel flows: no λ",
        Equation = "metering (21)",
        Inputs = [car.Ambient["ambient.humidity"]],
        Note = $"Fuel {car.FuelGrade}: {car.FuelOrigin.Note}",
    };
}
