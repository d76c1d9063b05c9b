using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;

namespace Tickover.Workshop.Mixture;

/// <summary>Puts the air side and the fuel side of a barrel together into a point of the map.</summary>
internal sealed class PointAssembly(SurveyModel model, AirSide air, int barrelInGroup)
{
    private const double NoAir = 1e-7;                 // kg/s: less than a dial meter shows by far
    private const double NoFuel = 1e-9;                // kg/s
    private const double LeanestRunning = 1.35;        // λ; leanest smooth running 18.5:1 (Schey and Clark, NACA 1938), misfiring beyond
    private const double RichestRunning = 0.55;        // λ; rich limit of burning, common practice
    private const double NearSonic = 0.95;             // of the choke's sonic flow
    private const double SonicFlux = 0.684731;         // Ψ at the critical ratio, γ 1.4
    private const double BeyondRated = 1.15;           // of the speed of peak power
    private const double JetReynoldsLimit = 20_000;    // Lichtarowicz's upper end

    private readonly BarrelAirWay _way = air.Engine.Barrels[air.Group.Barrels[barrelInGroup]].AirWay;

    internal BarrelPoint Point(int speed, int throttle, in FuelPoint fuel)
    {
        var rpm = air.Grid.SpeedsRpm[speed];
        var exchange = air.At(speed, throttle);
        var barrelAir = exchange.AirKilogramsPerCycle[barrelInGroup] * rpm / 120;
        var allAir = barrelAir + fuel.BledAirKilogramsPerSecond;
        var swept = air.Engine.Cylinder.SweptVolumeCubicMetres;
        var brake = exchange.WorkJoulesPerCycle / swept - EngineFriction.MeanPressurePascals(rpm);
        var noFuel = fuel.FuelKilogramsPerSecond < NoFuel;
        var noAir = allAir < NoAir;
        var ratio = noFuel || noAir ? 0 : allAir / fuel.FuelKilogramsPerSecond;
        var lambda = ratio * model.Ambient.DryAirFraction / model.Fuel.StoichiometricRatio;
        return new BarrelPoint
        {
            AirKilogramsPerSecond = allAir,
            MeanDepressionPascals = fuel.MeanDepressionPascals,
            PeakDepressionPascals = fuel.PeakDepressionPascals,
            ManifoldPressurePascals = fuel.ManifoldPressurePascals,
            MainFuelKilogramsPerSecond = fuel.MainKilogramsPerSecond,
            IdleFuelKilogramsPerSecond = fuel.IdleKilogramsPerSecond,
            ProgressionFuelKilogramsPerSecond = fuel.ProgressionKilogramsPerSecond,
            PumpFuelKilogramsPerSecond = fuel.PumpKilogramsPerSecond,
            CorrectorAirKilogramsPerSecond = fuel.CorrectorAirKilogramsPerSecond,
            WellDropMetres = fuel.LevelDropMetres,
            BackflowFraction = exchange.BackflowKilogramsPerCycle[barrelInGroup]
                / Math.Max(exchange.AirKilogramsPerCycle[barrelInGroup] + exchange.BackflowKilogramsPerCycle[barrelInGroup], double.Epsilon),
            AirFuelRatio = ratio,
            Lambda = lambda,
            VolumetricEfficiency = exchange.AirKilogramsPerCycle.Sum()
                / (model.Ambient.DensityKilogramsPerCubicMetre * swept * air.Group.Cylinders.Count),
            BrakeMeanPressurePascals = brake,
            Feeding = Feeding(fuel),
            Validity = Validity(rpm, exchange, fuel, lambda, brake, (noFuel, noAir)),
        };
    }

    private static FuelCircuit Feeding(in FuelPoint fuel)
    {
        if (fuel.MainKilogramsPerSecond >= fuel.IdleKilogramsPerSecond + fuel.ProgressionKilogramsPerSecond)
        {
            return fuel.AllRowsUncovered ? FuelCircuit.MainCorrecting : FuelCircuit.Main;
        }

        return fuel.ProgressionKilogramsPerSecond > fuel.IdleKilogramsPerSecond ? FuelCircuit.Progression : FuelCircuit.Idle;
    }

    private PointValidity Validity(
        double rpm, AirPoint exchange, in FuelPoint fuel, double lambda, double brake, (bool NoFuel, bool NoAir) nothing)
    {
        var sonic = _way.ChokeDischargeCoefficient * BarrelFlow.ChokeArea(_way) * SonicFlux * model.Ambient.PressurePascals
            / Math.Sqrt(model.Ambient.GasConstantJoulesPerKilogramKelvin * model.Ambient.TemperatureKelvin);
        var flags = PointValidity.Inside;
        void Mark(bool holds, PointValidity flag) => flags |= holds ? flag : PointValidity.Inside;
        Mark(nothing.NoFuel, PointValidity.NoFuel);
        Mark(nothing.NoAir, PointValidity.NoAir);
        Mark(brake < 0, PointValidity.Overrun);
        Mark(lambda > LeanestRunning, PointValidity.TooLeanToRun);
        Mark(lambda < RichestRunning && !nothing.NoFuel, PointValidity.TooRichToRun);
        Mark(fuel.PeakAirKilogramsPerSecond > NearSonic * sonic, PointValidity.ChokeNearSonic);
        Mark(fuel.MainJetReynolds > JetReynoldsLimit, PointValidity.JetOutsideRange);
        Mark(!exchange.Settled || !fuel.Settled, PointValidity.NotSettled);
        Mark(rpm > BeyondRated * model.RatedSpeedRpm, PointValidity.BeyondRatedSpeed);
        return flags;
    }
}
