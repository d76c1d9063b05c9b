using CsCheck;
using Tickover.Physics.Air;
using Tickover.Physics.Supply;

namespace Tickover.Physics.Tests.Supply;

public sealed class SupplySolverTests
{
    private const double Gravity = AirConstants.StandardGravityMetresPerSecondSquared;

    [Fact]
    public void A_fed_line_passes_the_demand_and_every_flow_adds_up()
    {
        var line = Lines.Three();

        var point = SupplySolver.Solve(line, Lines.Duty(line, 12));

        Assert.Equal(SupplyEnding.Converged, point.Ending);
        Assert.True(point.Feeds);
        Assert.All(point.Valves, valve => Assert.Equal(12 * Lines.KilogramsPerLitreHour, valve.MassFlow, 1e-12));
        Assert.Equal(36 * Lines.KilogramsPerLitreHour, point.Of("pump")!.MassFlow, 1e-12);
        Assert.Equal(24 * Lines.KilogramsPerLitreHour, point.Of("link 1")!.MassFlow, 1e-12);
    }

    [Fact]
    public void At_no_flow_the_pressure_is_the_pumps_less_the_height()
    {
        var line = Lines.Three();

        var point = SupplySolver.Solve(line, Lines.Duty(line, 0));

        // 24 kPa, and up from the fuel at 0.45 m to the seats at 0.87 m.
        var density = point.Of("pump")!.Density;
        Assert.All(point.Valves, valve => Assert.Equal(24_000 - density * Gravity * 0.42, valve.InletGaugePascals, 1e-6));
        Assert.All(point.Parts, part => Assert.True(double.IsFinite(part.StaticPascals + part.Speed + part.VapourPascals)));
    }

    [Fact]
    public void A_starved_valve_gets_what_pump_and_seat_pass_by_the_quadratic()
    {
        // Pump 20 kPa (1 - Q/Qf), straight into a seat of 2 mm: 20 000 - b Q = c Q².
        var line = new SupplyLine
        {
            Parts =
            [
                new FuelPump { Name = "pump", Kind = PumpKind.Mechanical, Curve = PumpCurve.FromWorkshop(20_000, 2e-5, 0) },
                new FloatValve { Name = "valve", After = "pump", SeatMetres = 0.002 },
            ],
        };

        var point = SupplySolver.Solve(line, Lines.Duty(line, 500));

        var density = point.Of("valve")!.Density;
        var area = 0.65 * Math.PI / 4 * 4e-6;
        var (a, b) = (density / (2 * area * area), 20_000 / 2e-5);
        var expected = (-b + Math.Sqrt(b * b + 4 * a * 20_000)) / (2 * a);
        Assert.Equal(1, point.Of("valve")!.VolumeFlow / expected, 1e-6);
        Assert.True(point.Valves[0].IsStarved);
        Assert.True(double.IsNaN(point.Valves[0].LevelChangeMetres));
        var shortfall = (500 * Lines.KilogramsPerLitreHour - point.Valves[0].MassFlow) / density;
        Assert.Equal(0.025 * 2.5e-3 / shortfall, point.Valves[0].RunsDrySeconds, 1e-9);
    }

    [Fact]
    public void Twice_the_hose_takes_twice_the_pressure()
    {
        static double DropOver(double length)
        {
            var line = Lines.Three();
            line = line with { Parts = [.. line.Parts.Select(part => part is PipeRun { Name: "hose" } hose ? hose with { LengthMetres = length } : part)] };
            return SupplySolver.Solve(line, Lines.Duty(line, 10)).Of("hose")!.DropPascals;
        }

        Assert.Equal(2, DropOver(1.2) / DropOver(0.6), 1e-9);
    }

    [Fact]
    public void A_regulator_holds_its_setting_and_does_nothing_where_less_comes()
    {
        static SupplyLine With(double set)
        {
            var line = Lines.Three();
            return line with
            {
                Parts =
                [
                    .. line.Parts.Select(part => part.Name.Equals("hose", StringComparison.Ordinal) ? part with { After = "regulator" } : part),
                    new PressureRegulator { Name = "regulator", After = "filter", SetGaugePascals = set, DroopPascalSeconds = 0, OutletHeightMetres = 0.7 },
                ],
            };
        }

        var (holding, idle) = (With(15_000), With(60_000));
        var held = SupplySolver.Solve(holding, Lines.Duty(holding, 5)).Of("regulator")!;
        var free = SupplySolver.Solve(idle, Lines.Duty(idle, 5)).Of("regulator")!;

        Assert.True(held.Regulates);
        Assert.Equal(15_000, held.OutletPascals - AirConstants.StandardPressurePascals, 1e-6);
        Assert.False(free.Regulates);
        Assert.Equal(free.InletPascals, free.OutletPascals, 1e-6);
    }

    [Fact]
    public void A_wider_return_takes_pressure_from_the_valves()
    {
        static SupplyPoint With(double bore)
        {
            var line = Lines.Three(bore);
            return SupplySolver.Solve(line, Lines.Duty(line, 5));
        }

        var (narrow, wide) = (With(0.0008), With(0.0016));

        Assert.True(wide.Of("return")!.MassFlow > 2 * narrow.Of("return")!.MassFlow);
        Assert.True(wide.Valves[2].InletGaugePascals < narrow.Valves[2].InletGaugePascals);
        Assert.All(new[] { narrow, wide }, point => Assert.Equal(SupplyEnding.Converged, point.Ending));
    }

    [Fact]
    public void A_regulator_before_a_return_and_thirsty_valves_meets_at_every_end()
    {
        var line = Lines.Three(0.0015);
        line = line with
        {
            Parts =
            [
                .. line.Parts.Select(part => part.Name.Equals("hose", StringComparison.Ordinal) ? part with { After = "regulator" } : part),
                new PressureRegulator { Name = "regulator", After = "filter", SetGaugePascals = 12_000, OutletHeightMetres = 0.7 },
            ],
        };

        var point = SupplySolver.Solve(line, Lines.Duty(line, 60));

        Assert.Equal(SupplyEnding.Converged, point.Ending);
        Assert.True(point.ResidualPascals <= 0.01);
        Assert.All(point.Valves, valve => Assert.True(valve.IsStarved && valve.MassFlow > 0));
    }

    [Fact]
    public void Fuel_that_boils_before_the_pump_breaks_the_flow_down()
    {
        var line = Lines.Three();
        line = line with { TankSurfaceHeightMetres = -0.6 };

        // 1.15 m up to the pump takes 8.2 kPa of the 80; what is left for friction is less than 45 l/h take.
        var celsius = FuelVapour.BoilingKelvin(60_000, 71_000) - AirConstants.IcePointKelvin;
        var cool = SupplySolver.Solve(line, Lines.Duty(line, 15));
        var hot = SupplySolver.Solve(line, Lines.Duty(line, 15, celsius) with { AirPascals = 80_000 });

        Assert.True(cool.Feeds);
        Assert.Equal(double.PositiveInfinity, cool.SuctionBoilsAtFlow);
        Assert.Equal(SupplyEnding.Converged, hot.Ending);
        Assert.False(hot.Feeds);
        Assert.True(hot.SuctionBoilsAtFlow > 0);
        Assert.InRange(hot.Of("pump")!.VolumeFlow, 0.9 * hot.SuctionBoilsAtFlow, hot.SuctionBoilsAtFlow);
    }

    [Fact]
    public void Slow_fuel_takes_the_warmth_of_the_bonnet_fast_fuel_the_tanks()
    {
        var line = Lines.Three();
        var hot = Lines.Duty(line, 0.4) with { BonnetKelvin = 353 };

        var idle = SupplySolver.Solve(line, hot);
        var full = SupplySolver.Solve(line, hot with { DemandKilogramsPerSecond = Lines.Duty(line, 14).DemandKilogramsPerSecond });

        // One hose of 0.6 m, 12 mm outside: 0.339 W/K into 1.2 l/h of 2.2 kJ/(kg K), 0.546 W/K: 46 % of the way from 20 to 80 °C.
        Assert.Equal(293.15 + 59.85 * (1 - Math.Exp(-0.33929 / (1.2 * Lines.KilogramsPerLitreHour * 2200))), idle.Of("hose")!.OutletKelvin, 0.05);
        Assert.InRange(full.Of("hose")!.OutletKelvin, 293.15, 295.5);
    }

    [Fact]
    public void A_line_without_a_pump_runs_down_and_stays_still_uphill()
    {
        static SupplyLine Gravity(double surface) => new()
        {
            TankSurfaceHeightMetres = surface,
            Parts =
            [
                new PipeRun { Name = "pipe", BoreMetres = 0.008, LengthMetres = 1 },
                new FloatValve { Name = "valve", After = "pipe", SeatMetres = 0.003 },
            ],
        };

        var down = SupplySolver.Solve(Gravity(0.5), Lines.Duty(Gravity(0.5), 8));
        var up = SupplySolver.Solve(Gravity(-0.5), Lines.Duty(Gravity(-0.5), 8));

        Assert.True(down.Feeds);
        Assert.Equal(0, up.Valves[0].MassFlow);
        Assert.True(up.Valves[0].IsStarved);
        Assert.Equal(SupplyEnding.Converged, up.Ending);
    }

    [Fact]
    public void Any_line_ends_with_pressures_that_meet_and_flows_within_the_demand() =>
        Gen.Select(Gen.Double[0.003, 0.010], Gen.Double[0.0008, 0.003], Gen.Double[0, 60], Gen.Double[0, 0.003], Gen.Double[-10, 60], Gen.Double[1, 300])
            .Sample((bore, seat, demand, returning, celsius, loading) =>
            {
                var line = Changed(Lines.Three(returning < 0.0005 ? 0 : returning), bore, seat, loading);

                var point = SupplySolver.Solve(line, Lines.Duty(line, demand, celsius));

                Assert.Equal(SupplyEnding.Converged, point.Ending);
                Assert.True(point.ResidualPascals <= 0.01);
                Assert.All(point.Valves, valve => Assert.InRange(valve.MassFlow, 0, valve.DemandKilogramsPerSecond));
                Assert.Equal(point.Of("pump")!.MassFlow, point.Valves.Sum(valve => valve.MassFlow) + (point.Of("return")?.MassFlow ?? 0), 1e-9);
            });

    [Fact]
    public void More_for_one_valve_never_gives_another_more() =>
        Gen.Select(Gen.Double[0.003, 0.008], Gen.Double[0.0012, 0.0025], Gen.Double[1, 40], Gen.Double[1, 2])
            .Sample((bore, seat, demand, more) =>
            {
                var line = Changed(Lines.Three(), bore, seat, 1);
                var duty = Lines.Duty(line, demand);
                var greedy = duty with { DemandKilogramsPerSecond = new Dictionary<string, double>(duty.DemandKilogramsPerSecond, StringComparer.Ordinal) { ["rear"] = more * demand * Lines.KilogramsPerLitreHour } };

                var (before, after) = (SupplySolver.Solve(line, duty), SupplySolver.Solve(line, greedy));

                Assert.True(after.Valves[0].MassFlow <= before.Valves[0].MassFlow * (1 + 1e-6));
                Assert.True(after.Valves[0].InletGaugePascals <= before.Valves[0].InletGaugePascals + 0.1);
            });

    [Fact]
    public void The_margin_is_where_the_first_valve_runs_short()
    {
        var line = Lines.Three();
        var duty = Lines.Duty(line, 12);

        var margin = SupplyMargin.Of(line, duty);
        SupplyDuty Times(double factor) => duty with { DemandKilogramsPerSecond = duty.DemandKilogramsPerSecond.ToDictionary(pair => pair.Key, pair => factor * pair.Value, StringComparer.Ordinal) };

        Assert.InRange(margin.Factor, 1, 4);
        Assert.Equal("rear", margin.FirstToStarve);
        Assert.True(SupplySolver.Solve(line, Times(margin.Factor)).Feeds);
        Assert.False(SupplySolver.Solve(line, Times(margin.Factor * 1.002)).Feeds);
    }

    [Fact]
    public void A_mechanical_pump_gives_less_at_idle_and_no_more_than_was_measured()
    {
        var pump = Lines.Pump() with { Kind = PumpKind.Mechanical, MeasuredRpm = 2000 };

        Assert.Equal(0.4, pump.FlowFactor(800, null), 1e-12);
        Assert.Equal(1, pump.FlowFactor(6000, null), 1e-12);
        Assert.Equal(2, (pump with { GrowsToRpm = 4000 }).FlowFactor(6000, null), 1e-12);
        Assert.Equal(12.0 / 13, Lines.Pump().FlowFactor(null, 12), 1e-12);
    }

    private static SupplyLine Changed(SupplyLine line, double bore, double seat, double loading) => line with
    {
        Parts =
        [
            .. line.Parts.Select(part => part switch
            {
                PipeRun pipe => pipe with { BoreMetres = bore },
                FloatValve valve => valve with { SeatMetres = seat },
                FuelFilter filter => filter with { Loading = loading },
                _ => part,
            }),
        ],
    };
}
