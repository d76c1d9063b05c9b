using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class EnginePhysicsTests
{
    private const double Tolerance = 1e-9;

    private static Car Tern => CarTexts.Sound(Repository.Sample("tern-2800"));

    [Fact]
    public void The_sixs_cylinder_is_its_own()
    {
        var spec = Tern.ToEngineSpec();

        // pi/4 x 8.3^2 x 8.62 = 466.40 cm3; six of them 2798 cm3
        Assert.Equal(466.40e-6, spec.Cylinder.SweptVolumeCubicMetres, 0.01e-6);
        Assert.Equal(9.3, spec.Cylinder.CompressionRatio);
        Assert.Equal([0.0, 480.0, 240.0, 600.0, 120.0, 360.0], spec.FiringDegrees);
    }

    [Fact]
    public void Valve_timing_turns_from_the_trades_way_into_crank_angles()
    {
        var spec = Tern.ToEngineSpec();

        // Inlet 24 before TDC (360) to 64 after BDC (540); exhaust 64 before BDC (180) to 24 after TDC (360).
        Assert.Equal(336, spec.IntakeValve.OpensDegrees, Tolerance);
        Assert.Equal(604, spec.IntakeValve.ClosesDegrees, Tolerance);
        Assert.Equal(116, spec.ExhaustValve.OpensDegrees, Tolerance);
        Assert.Equal(384, spec.ExhaustValve.ClosesDegrees, Tolerance);
    }

    [Fact]
    public void One_barrel_on_each_cylinder_makes_a_group_of_each()
    {
        var groups = Tern.ToEngineSpec().Groups;

        Assert.Equal(6, groups.Count);
        Assert.All(groups, g => Assert.Equal(g.Barrels, g.Cylinders));
        Assert.All(groups, g => Assert.Equal(0, g.SharedVolumeCubicMetres));
    }

    [Fact]
    public void A_shared_manifold_is_one_group_with_its_volume()
    {
        var group = Assert.Single(CarTexts.Sound(Repository.Sample("gannet-1500")).ToEngineSpec().Groups);

        Assert.Equal([0, 1], group.Barrels);
        Assert.Equal([0, 1, 2, 3], group.Cylinders);
        Assert.Equal(450e-6, group.SharedVolumeCubicMetres, Tolerance);
    }

    [Fact]
    public void Back_pressure_is_that_at_peak_power()
    {
        var car = Tern;
        var spec = car.ToEngineSpec();

        // 1.225 x 466.40e-6 x 5750/120 x 0.85 = 0.023270 kg/s; 150 hPa there
        const double MassFlow = 0.023270;
        Assert.Equal(15000, spec.Exhaust.BackPressureCoefficient * MassFlow * MassFlow, 15.0);
    }

    [Fact]
    public void A_barrel_is_mapped_part_for_part()
    {
        var barrel = Tern.ToEngineSpec().Barrels[0];

        Assert.Equal(0.040, barrel.AirWay.ThrottleBoreMetres, Tolerance);
        Assert.Equal(0.032, barrel.AirWay.ChokeDiameterMetres, Tolerance);
        Assert.Equal(8 * Math.PI / 180, barrel.AirWay.ClosedAngleRadians, Tolerance);
        Assert.Equal(1.35e-3, barrel.Main.JetDiameterMetres, Tolerance);
        Assert.Equal(1.90e-3, barrel.Main.AirCorrectorDiameterMetres, Tolerance);
        Assert.Equal(4, barrel.Main.HoleRows.Count);
        Assert.Equal(0.006, barrel.Float.LipHeightMetres, Tolerance);
        Assert.Equal(0.50e-3, barrel.Idle.JetDiameterMetres, Tolerance);
        Assert.Equal(2.25, barrel.Idle.ScrewTurns, Tolerance);
        Assert.Equal(4, barrel.Idle.ProgressionHoles.Count);
        Assert.Equal(0.40e-3, barrel.Pump!.JetDiameterMetres, Tolerance);
    }

    [Fact]
    public void A_pump_jet_of_nought_is_no_pump() =>
        Assert.Null(CarDocument.Change(Tern, "barrel.pumpJet", "0").Car!.ToEngineSpec().Barrels[0].Pump);

    [Fact]
    public void Air_and_fuel_are_those_of_the_day()
    {
        var car = CarDocument.Change(Tern, "ambient.altitude", "2000 m").Car!;

        // U.S. Standard Atmosphere 1976, 2000 m geometric: 79501 Pa (geopotential 1999.4 m).
        Assert.Equal(79501, car.ToAmbientAir().PressurePascals, 2.0);

        // E5 stoichiometric 14.28 within the trade's 14.2 to 14.4.
        Assert.InRange(car.ToFuelProperties().StoichiometricRatio, 14.2, 14.4);
    }

    [Fact]
    public void A_change_of_any_figure_changes_the_physics()
    {
        // A figure that the mapping forgets would leave the specification as it was.
        foreach (var sample in new[] { "tern-2800", "gannet-1500" })
        {
            var car = CarTexts.Sound(Repository.Sample(sample));
            var before = Everything(car);
            foreach (var figure in car.Engine.Concat(car.Ambient).Concat(car.Barrels[0].Figures))
            {
                if (figure.Definition.Key is "engine.sharedVolume" && !car.SharedManifold)
                {
                    continue;
                }

                Assert.True(Nudges(figure).Any(t => CarDocument.Change(car, figure.Definition.Key, t).Car is { } changed && !string.Equals(Everything(changed), before, StringComparison.Ordinal)), figure.Definition.Key);
            }
        }
    }

    [Fact]
    public void Every_member_of_the_physics_specifications_can_be_set_from_a_document()
    {
        // A member that somebody adds to a specification and forgets here would stay at its default for every car.
        var car = CarTexts.Sound(CarTexts.Twin);
        var before = Leaves(car.ToEngineSpec());
        var reached = car.Engine.Concat(car.Barrels[0].Figures)
            .SelectMany(figure => Nudges(figure).Select(text => CarDocument.Change(car, figure.Definition.Key, text).Car))
            .OfType<Car>()
            .SelectMany(changed => Leaves(changed.ToEngineSpec()).Where(leaf => before.TryGetValue(leaf.Key, out var value) && !value.Equals(leaf.Value)))
            .Select(leaf => leaf.Key)
            .ToHashSet(StringComparer.Ordinal);

        Assert.True(before.Count > 60, $"Only {before.Count} members were found.");
        Assert.Equal("", string.Join(", ", before.Keys.Except(reached, StringComparer.Ordinal)));
    }

    // Numbers of cylinders and barrels come from the frame of the document, not from a figure.
    private static Dictionary<string, object> Leaves(EngineSpec spec)
    {
        var barrel = spec.Barrels[0];
        object[] parts = [spec.Cylinder, spec.Intake, spec.Exhaust, spec.Combustion, barrel.AirWay, barrel.Float, barrel.Main, barrel.Idle, barrel.Pump ?? new PumpCircuit { JetDiameterMetres = 0 }];
        var leaves = parts.SelectMany(part => Members(part.GetType().Name, part))
            .Concat(Members("Inlet", spec.IntakeValve))
            .Concat(Members("Exhaust", spec.ExhaustValve));
        return leaves.ToDictionary(StringComparer.Ordinal);
    }

    private static IEnumerable<KeyValuePair<string, object>> Members(string name, object part) =>
        part.GetType().GetProperties()
            .Where(p => p.CanWrite && p.PropertyType.IsValueType)
            .Select(p => KeyValuePair.Create($"{name}.{p.Name}", p.GetValue(part)!));

    private static IEnumerable<string> Nudges(Figure figure)
    {
        var definition = figure.Definition;
        foreach (var part in new[] { 0.02, -0.02, 0.2, -0.2, 0.5, -0.5 })
        {
            var si = Math.Clamp(figure.Si + (part * (definition.MaximumSi - definition.MinimumSi)), definition.MinimumSi, definition.MaximumSi);
            yield return FigureText.Show(definition.Measure, definition.Measure == Measure.Count ? Math.Round(si) : si);
        }
    }

    private static string Everything(Car car)
    {
        var spec = car.ToEngineSpec();
        return string.Join('\n', spec.Cylinder, spec.IntakeValve, spec.ExhaustValve, spec.Intake, spec.Exhaust, spec.Combustion, Text(spec.Barrels[0]), Text(spec.Groups[0]), car.ToAmbientAir(), car.ToFuelProperties());
    }

    private static string Text(BarrelSpec barrel) => $"{barrel.AirWay}{barrel.Float}{barrel.Main}{barrel.Idle}{barrel.Pump}";

    private static string Text(IntakeGroup group) => $"{string.Join(',', group.Barrels)}{string.Join(',', group.Cylinders)}{group.SharedVolumeCubicMetres:R}";
}
