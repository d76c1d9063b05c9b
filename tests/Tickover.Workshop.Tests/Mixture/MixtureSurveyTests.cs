using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Tests.Mixture;

/// <summary>What the map must show, whatever its absolute figures.</summary>
public sealed class MixtureSurveyTests
{
    private static readonly SurveyGrid Grid = new() { SpeedsRpm = [1000, 2500, 4500], ThrottleDegrees = [2, 5, 10, 30, 60, 82] };

    private static readonly Car Tern = Read("tern-2800");

    [Fact]
    public void A_bigger_main_jet_richens_full_load_and_leaves_idle_alone()
    {
        var fitted = MixtureSurvey.Run(Tern, Grid);
        var trial = fitted.Trial(Change("barrel.mainJet", "145"));

        Assert.True(At(trial, 2, 5).Lambda < 0.97 * At(fitted, 2, 5).Lambda);

        // the idle jet's fuel comes through the main jet, which costs it next to nothing
        Assert.InRange(At(trial, 0, 0).Lambda / At(fitted, 0, 0).Lambda, 0.995, 0.99999);
    }

    [Fact]
    public void An_idle_jet_fed_through_the_main_jet_holds_the_main_circuit_back()
    {
        var shared = MixtureSurvey.Run(Change("barrel.idleFeedShare", "100 %"), Grid);
        var apart = MixtureSurvey.Run(Change("barrel.idleFeedShare", "0 %"), Grid);

        Assert.True(At(apart, 1, 2).MainFuelKilogramsPerSecond > 0);
        Assert.Equal(0, At(shared, 1, 2).MainFuelKilogramsPerSecond);

        // wide open the main jet's drop is more than the idle passage draws with
        var (open, feeding) = (At(shared, 1, 5), At(apart, 1, 5));
        Assert.True(open.MainFuelKilogramsPerSecond < feeding.MainFuelKilogramsPerSecond);
        Assert.True(open.IdleFuelKilogramsPerSecond + open.ProgressionFuelKilogramsPerSecond
            < feeding.IdleFuelKilogramsPerSecond + feeding.ProgressionFuelKilogramsPerSecond);
    }

    [Fact]
    public void A_trial_jet_leaves_the_air_as_it_was()
    {
        var fitted = MixtureSurvey.Run(Tern, Grid);
        var trial = fitted.Trial(Change("barrel.idleJet", "60"));

        Assert.Equal(At(fitted, 1, 3).ManifoldPressurePascals, At(trial, 1, 3).ManifoldPressurePascals);
        Assert.True(At(trial, 1, 1).Lambda < At(fitted, 1, 1).Lambda);
    }

    [Fact]
    public void The_mixture_screw_matters_at_idle_and_fades_through_progression()
    {
        var fitted = MixtureSurvey.Run(Tern, Grid);
        var trial = fitted.Trial(Change("barrel.screwTurns", "1"));
        double Effect(int throttle) => Math.Abs(At(trial, 0, throttle).Lambda / At(fitted, 0, throttle).Lambda - 1);

        Assert.True(Effect(0) > 0.05);
        Assert.True(Effect(2) < Effect(0) / 2);
    }

    [Fact]
    public void Altitude_richens_by_about_the_root_of_density()
    {
        var low = MixtureSurvey.Run(Tern, Grid);
        var high = MixtureSurvey.Run(Change("ambient.altitude", "2000 m"), Grid);
        var expected = Math.Sqrt(Tern.ToAmbientAir().DensityKilogramsPerCubicMetre / high.Car.ToAmbientAir().DensityKilogramsPerCubicMetre);

        Assert.Equal(expected, At(low, 2, 5).AirFuelRatio / At(high, 2, 5).AirFuelRatio, 0.04); // emulsion and pulses bend the plain rule
    }

    [Fact]
    public void A_lower_float_level_leans_the_start_of_the_main_circuit_more_than_full_load()
    {
        var fitted = MixtureSurvey.Run(Tern, new SurveyGrid { SpeedsRpm = [2500], ThrottleDegrees = [18, 82] });
        var trial = fitted.Trial(Change("barrel.floatLevel", "9 mm"));
        double Lost(int throttle) => 1 - At(trial, 0, throttle).MainFuelKilogramsPerSecond / At(fitted, 0, throttle).MainFuelKilogramsPerSecond;

        Assert.True(Lost(0) > 3 * Lost(1));
    }

    [Fact]
    public void No_figure_of_a_map_is_not_a_number()
    {
        foreach (var sample in new[] { "tern-2800", "osprey-v8", "gannet-1500" })
        {
            foreach (var p in MixtureSurvey.Run(Read(sample), Grid).Map.Barrels.SelectMany(b => b.Points.Cast<BarrelPoint>()))
            {
                Assert.True(double.IsFinite(p.AirFuelRatio + p.Lambda + p.FuelKilogramsPerSecond + p.AirKilogramsPerSecond
                    + p.MeanDepressionPascals + p.WellDropMetres + p.BrakeMeanPressurePascals + p.BackflowFraction));
            }
        }
    }

    [Fact]
    public void The_working_ends_in_the_point_it_explains()
    {
        var working = MixtureSurvey.Run(Tern, Grid).Explain(1, 4000, 45);

        Assert.Equal(working.Point.Lambda.ToString("F2", System.Globalization.CultureInfo.InvariantCulture), working.Steps[^1].Answer);
    }

    private static BarrelPoint At(MixtureSurvey survey, int speed, int throttle) => survey.Map.ForBarrel(1).Points[speed, throttle];

    private static Car Read(string sample) => CarDocument.Read(Repository.Sample(sample)).Car!;

    private static Car Change(string path, string text) => CarDocument.Change(Tern, path, text).Car!;
}
