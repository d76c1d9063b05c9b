using System.Globalization;
using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench;

/// <summary>What half the step changes, and how well cycles close, over the whole default grid of each sample.</summary>
/// <remarks>The step is that of the gas exchange. The metering keeps its own 360 steps a cycle: its error shows against the peer.</remarks>
internal static class AccuracyStudy
{
    private const PointValidity NotRunning =
        PointValidity.Overrun | PointValidity.TooLeanToRun | PointValidity.TooRichToRun | PointValidity.NoFuel | PointValidity.NoAir;

    internal static int Run()
    {
        Console.WriteLine("| car | points | air, largest % | air, 99 of 100 % | AFR where it runs, largest % | 99 of 100 % | points | AFR anywhere else, largest % | unsettled | residual | mass | energy |");
        Console.WriteLine("|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
        foreach (var name in Samples.Names)
        {
            Study(Samples.Read(name));
        }

        return 0;
    }

    private static void Study(Car car)
    {
        var grid = MixtureSurvey.DefaultGrid(car);
        var runs = MixtureSurvey.Run(car, grid).Map.Barrels[0].Points;
        var (whole, half) = (Solve(car, grid, 720), Solve(car, grid, 1440));
        var (air, running, others, unsettled) = (new List<double>(), new List<double>(), new List<double>(), 0);
        var (residual, mass, energy) = (0.0, 0.0, 0.0);
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                var (a, b) = (whole.Ratio(i, j), half.Ratio(i, j));
                air.Add(Change(whole.Air(i, j), half.Air(i, j)));
                ((runs[i, j].Validity & NotRunning) == PointValidity.Inside ? running : others).Add(Change(a, b));
                unsettled += whole.Settled(i, j) ? 0 : 1;
                var exchange = whole.Side.At(i, j);
                residual = Math.Max(residual, exchange.Residual);
                mass = Math.Max(mass, Math.Abs(exchange.MassImbalance));
                energy = Math.Max(energy, Math.Abs(exchange.EnergyImbalance));
            }
        }

        air.Sort();
        running.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {car.Name} | {air.Count} | {air[^1]:F3} | {air[air.Count * 99 / 100]:F3} | {running[^1]:F3} | {running[running.Count * 99 / 100]:F3} | {running.Count} "
            + $"| {others.Where(double.IsFinite).Max():F1} | {unsettled} | {residual:0.0e-0} | {mass:0.0e-0} | {energy:0.0e-0} |"));
    }

    private static double Change(double before, double after) => before == after ? 0 : Math.Abs(after / before - 1) * 100;

    private static Solved Solve(Car car, SurveyGrid grid, int steps)
    {
        var engine = car.ToEngineSpec();
        var group = engine.Groups[0];
        var air = AirSideSolver.Solve(
            engine, group, car.ToAmbientAir(), new OperatingGrid(grid.SpeedsRpm, grid.ThrottleDegrees), new AirSideSettings { StepsPerCycle = steps });
        return new Solved(air, FuelSideSolver.Solve(air, 0, engine.Barrels[group.Barrels[0]], car.ToFuelProperties()));
    }

    private sealed record Solved(AirSide Side, FuelPoint[,] Fuel)
    {
        internal double Air(int i, int j) => Side.At(i, j).AirKilogramsPerCycle[0];

        internal double Ratio(int i, int j) =>
            (Air(i, j) * Side.Grid.SpeedsRpm[i] / 120 + Fuel[i, j].BledAirKilogramsPerSecond) / Fuel[i, j].FuelKilogramsPerSecond;

        internal bool Settled(int i, int j) => Side.At(i, j).Settled && Fuel[i, j].Settled;
    }
}
