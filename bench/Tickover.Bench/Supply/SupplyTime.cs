using System.Diagnostics;
using System.Globalization;
using Tickover.Physics.Fuels;
using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Bench.Supply;

/// <summary>How long a supply line takes: fed, starved, with return and regulator, twelve chambers; its margin; its diagnosis.</summary>
internal static class SupplyTime
{
    private const int Repeats = 200;
    private const int CarRepeats = 15;

    public static int Run()
    {
        Console.WriteLine("line                                       solve ms   longest   steps   margin ms   residual Pa");
        foreach (var (name, chambers, each, restrictor) in new[]
        {
            ("two chambers, fed", 2, 12.0, 0.0),
            ("three chambers, fed", 3, 12.0, 0.0),
            ("three chambers, starved", 3, 60.0, 0.0),
            ("three chambers, return, fed", 3, 8.0, 0.001),
            ("three chambers, return, starved", 3, 60.0, 0.001),
            ("twelve chambers, return, starved", 12, 30.0, 0.001),
        })
        {
            var line = Line(chambers, restrictor);
            var duty = Duty(line, each);
            var (mean, longest) = Timed(() => SupplySolver.Solve(line, duty));
            var (margin, _) = Timed(() => SupplyMargin.Of(line, duty));
            var point = SupplySolver.Solve(line, duty);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-40} {mean,10:F3} {longest,9:F3} {point.Iterations,7} {margin,11:F3} {point.ResidualPascals,13:E1}"));
        }

        var test = new SupplyTest { Line = Line(3, 0.001), Duty = Duty(Line(3, 0.001), 0), FilterName = "filter" };
        var readings = new Dictionary<SupplyReadingKind, double> { [SupplyReadingKind.FlowAtChamber] = 1e-5, [SupplyReadingKind.DeadHead] = 20_000 };
        var (diagnosis, worst) = Timed(() => SupplyDiagnostician.Diagnose(test, readings));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"diagnosis, three chambers, return",-40} {diagnosis,10:F3} {worst,9:F3}"));
        Demand();
        return 0;
    }

    // What a car document in place of the power costs: its full load and its idle, once; after that both are kept.
    private static void Demand()
    {
        var text = File.ReadAllText(Path.Combine(Samples.Root, "samples", "tern.supply.json"));
        var times = Enumerable.Range(0, CarRepeats).Select(i =>
        {
            var other = text.Replace("\"18 °C\"", string.Create(CultureInfo.InvariantCulture, $"\"{10 + i} °C\""), StringComparison.Ordinal); // another day: nothing kept of it
            var watch = Stopwatch.StartNew();
            return SupplyDocument.Read(other).Supply is null ? throw new InvalidOperationException("The sample is not read.") : watch.Elapsed.TotalMilliseconds;
        }).Order().ToList();
        var supply = SupplyDocument.Read(text).Supply!;
        var (whole, longest) = Timed(() => SupplyAnalyst.Of(supply));
        var (again, _) = Timed(() => SupplyDocument.Read(text));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"demand from a car, first time (median)",-40} {times[CarRepeats / 2],10:F1} {times[^1],9:F1}"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"the document read again",-40} {again,10:F3}"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"analysis of the sample, all cases",-40} {whole,10:F3} {longest,9:F3}"));
    }

    private static (double Mean, double Longest) Timed<T>(Func<T> work)
    {
        for (var i = 0; i < Repeats; i++)
        {
            work();
        }

        var longest = TimeSpan.Zero;
        var all = Stopwatch.StartNew();
        for (var i = 0; i < Repeats; i++)
        {
            var one = Stopwatch.StartNew();
            work();
            longest = one.Elapsed > longest ? one.Elapsed : longest;
        }

        return (all.Elapsed.TotalMilliseconds / Repeats, longest.TotalMilliseconds);
    }

    private static SupplyLine Line(int chambers, double restrictor)
    {
        var parts = new List<SupplyPart>
        {
            new LineFitting { Name = "pick-up", BoreMetres = 0.006, LossCoefficient = SupplyLosses.StandingEntry, OutletHeightMetres = 0.5 },
            new PipeRun { Name = "pipe", After = "pick-up", BoreMetres = 0.006, LengthMetres = 3.2, LossCoefficient = 3, HeatTakenWattsPerKelvin = SupplyLosses.HeatTaken(0.008, 3.2) },
            new FuelPump { Name = "pump", After = "pipe", Kind = PumpKind.Electric, Curve = new PumpCurve([(0, 24_000), (1.7e-5, 17_000), (3e-5, 0)]), OutletHeightMetres = 0.6 },
            FuelFilter.FromDrop("filter", 1500, 1.7e-5, 0.6) with { After = "pump", OutletHeightMetres = 0.7 },
            new PipeRun { Name = "hose", After = "filter", BoreMetres = 0.006, LengthMetres = 0.6, OutletHeightMetres = 0.85, Zone = SupplyZone.Bonnet, HeatTakenWattsPerKelvin = SupplyLosses.HeatTaken(0.012, 0.6) },
        };
        for (var i = 1; i <= chambers; i++)
        {
            var before = i == 1 ? "hose" : $"link {i - 1}";
            parts.Add(new FloatValve { Name = $"chamber {i}", After = before, SeatMetres = 0.00175, OutletHeightMetres = 0.87, Zone = SupplyZone.Bonnet });
            if (i < chambers)
            {
                parts.Add(new PipeRun { Name = $"link {i}", After = before, BoreMetres = 0.006, LengthMetres = 0.2, OutletHeightMetres = 0.85, Zone = SupplyZone.Bonnet, HeatTakenWattsPerKelvin = SupplyLosses.HeatTaken(0.012, 0.2) });
            }
        }

        if (restrictor > 0)
        {
            parts.Add(new TankReturn { Name = "return", After = "hose", RestrictorMetres = restrictor, OutletHeightMetres = 0.6 });
        }

        return new SupplyLine { Parts = parts, TankSurfaceHeightMetres = 0.45 };
    }

    private static SupplyDuty Duty(SupplyLine line, double litresHourEach) => new()
    {
        Name = "trial",
        Fuel = new SupplyFuel { Blend = FuelGrade.Ethanol(5).Blend, VapourPressureAt38Pascals = 60_000 },
        DemandKilogramsPerSecond = line.Valves.ToDictionary(valve => valve.Name, _ => litresHourEach * 0.745 / 3600, StringComparer.Ordinal),
        TankKelvin = 298,
        ChassisKelvin = 308,
        BonnetKelvin = 343,
    };
}
