using CsCheck;
using Tickover.Physics.Supply;

namespace Tickover.Physics.Tests.Supply;

public sealed class SupplyLawsTests
{
    private const double Density = 740;

    [Fact]
    public void The_friction_factor_is_continuous_from_laminar_to_turbulent()
    {
        const double step = 1e-6;
        foreach (var end in new[] { DarcyFriction.LaminarUpTo, DarcyFriction.TurbulentFrom })
        {
            Assert.Equal(DarcyFriction.Of(end * (1 - step), 1e-3), DarcyFriction.Of(end * (1 + step), 1e-3), 1e-6);
        }
    }

    [Fact]
    public void A_pipes_drop_rises_with_the_flow_and_turns_its_sign_with_it() =>
        Gen.Select(Gen.Double[0.002, 0.012], Gen.Double[0, 1e-4], Gen.Double[0, 2e-4], Gen.Double[1.0001, 1.5], Gen.Double[0, 5])
            .Sample((bore, roughness, flow, more, losses) =>
            {
                var pipe = new PipeRun { Name = "pipe", BoreMetres = bore, LengthMetres = 1, RoughnessMetres = Math.Min(roughness, bore / 25), LossCoefficient = losses };

                Assert.True(pipe.Drop(more * flow, Density, 5e-4) >= pipe.Drop(flow, Density, 5e-4));
                Assert.Equal(-pipe.Drop(flow, Density, 5e-4), pipe.Drop(-flow, Density, 5e-4), 1e-9);
            });

    [Fact]
    public void A_filter_shows_the_drop_it_was_made_from()
    {
        var filter = FuelFilter.FromDrop("filter", 2000, 1e-5, 0.5);

        Assert.Equal(2000, filter.Drop(1e-5, Density, FuelFilter.MeasuredViscosity), 0.01);
        Assert.Equal(1000 * 10 + 1000, (filter with { Loading = 10 }).Drop(1e-5, Density, FuelFilter.MeasuredViscosity), 0.01);
    }

    [Fact]
    public void Fuel_boils_where_its_vapour_pressure_is_the_airs()
    {
        var kelvin = FuelVapour.BoilingKelvin(60_000, 101_325);

        Assert.Equal(101_325, FuelVapour.TruePressure(60_000, kelvin), 0.01);
        Assert.InRange(kelvin, 320, 335); // 47 to 62 °C for summer petrol
    }

    [Fact]
    public void A_little_ethanol_lifts_the_vapour_pressure_and_much_lowers_it()
    {
        Assert.Equal(60_000, FuelVapour.WithEthanol(60_000, 0), 1e-9);
        Assert.InRange(FuelVapour.WithEthanol(60_000, 0.05), 66_000, 67_500);
        Assert.Equal(66_900, FuelVapour.WithEthanol(60_000, 0.10), 1e-6);
        Assert.True(FuelVapour.WithEthanol(60_000, 0.85) < 60_000);
    }

    [Fact]
    public void The_level_is_the_set_one_at_the_pressure_it_was_set_with_and_nothing_flowing()
    {
        var valve = Lines.Valve("valve", "hose") with { SetAtGaugePascals = 20_000 };

        Assert.Equal(0, FloatLevel.Running(valve, 20_000, 0, Density), 1e-15);
        Assert.Equal(FloatLevel.ShutOffRise(valve, 5_000, Density), FloatLevel.Running(valve, 25_000, 0, Density), 1e-15);
    }

    [Fact]
    public void The_level_sinks_with_the_flow_by_the_lever_times_the_needles_lift()
    {
        var valve = Lines.Valve("valve", "hose");
        var half = valve.WideOpenFlow(15_000, Density) / 2;

        Assert.Equal(3 * 0.00175 / 4, FloatLevel.Running(valve, 15_000, 0, Density) - FloatLevel.Running(valve, 15_000, half, Density), 1e-12);
    }

    [Fact]
    public void At_the_flooding_pressure_the_fuel_stands_at_the_spill()
    {
        var valve = Lines.Valve("valve", "hose") with { SetAtGaugePascals = 10_000 };

        var flooding = FloatLevel.FloodingPressure(valve, Density);

        Assert.Equal(valve.SpillMetres, FloatLevel.Running(valve, flooding, 0, Density), 1e-12);
    }

    [Fact]
    public void Jets_ahead_of_the_float_stand_lower_uphill_and_higher_under_braking()
    {
        var valve = Lines.Valve("valve", "hose") with { JetAheadMetres = 0.03, JetLeftMetres = -0.02 };

        Assert.Equal(-0.003, FloatLevel.TiltRise(valve, 0.980665, 0), 1e-12);
        Assert.Equal(0.006, FloatLevel.TiltRise(valve, -1.96133, 0), 1e-12);
        Assert.Equal(0.01, FloatLevel.TiltRise(valve, 0, 4.903325), 1e-12);
        Assert.Equal(double.PositiveInfinity, FloatLevel.RunsDry(valve, 0));
    }

    [Fact]
    public void A_filter_for_a_jet_of_45_keeps_back_45_thousandths()
    {
        Assert.Equal(45e-6, FilterFineness.CoarsestFor(0.00045), 1e-12);
        Assert.Equal(0.5, FilterFineness.Efficiency(2), 1e-12);
    }
}
