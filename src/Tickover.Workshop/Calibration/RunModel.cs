using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>The mixture of a car with the jets of one run, at any values of the unknowns. The air side is solved once.</summary>
internal sealed class RunModel
{
    private const double NoFuel = 1e-9;                 // kg/s
    private const double MostLambda = 3;                // leaner than anything that burns; keeps logarithms finite
    // A fit and a search compare thousands of maps with each other; the last tenth of a per cent is no use to them.
    private static readonly FuelSideSettings Quick = new() { StepsPerCycle = 120 };
    private readonly SurveyModel _model;
    private readonly List<(AirSide Air, int InGroup, BarrelSpec Barrel, double[] Share)> _kinds = [];
    private readonly int _banks;

    internal RunModel(Car car, SurveyGrid grid, SurveyAir known, CancellationToken cancellation)
    {
        (Car, Grid, _model, _banks) = (car, grid, SurveyModel.Of(car), car.Banks.Max());
        var keys = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var barrel in car.Barrels)
        {
            var spec = _model.Engine.Barrels[barrel.Number - 1];
            var group = _model.Engine.Groups.First(g => g.Barrels.Contains(barrel.Number - 1));
            var key = AirKey.Of(_model.Engine, group, _model.Ambient, grid) + AirKey.Of(barrel, spec);
            if (!keys.TryGetValue(key, out var kind))
            {
                keys.Add(key, kind = _kinds.Count);
                _kinds.Add((known.Get(_model, group, grid, cancellation), group.Barrels.ToList().IndexOf(barrel.Number - 1), spec, new double[_banks + 1]));
            }

            _kinds[kind].Share[0]++;
            foreach (var cylinder in barrel.Cylinders)
            {
                _kinds[kind].Share[car.Banks[cylinder - 1]] += 1.0 / barrel.Cylinders.Count;
            }
        }
    }

    internal Car Car { get; }

    internal SurveyGrid Grid { get; }

    /// <summary>Fuel over air over the stoichiometric part, [bank, speed, throttle]; bank 0 is all of them.</summary>
    internal double[,,] Equivalence(IReadOnlyList<double> values, CancellationToken cancellation)
    {
        var trims = new CircuitTrims(values);
        var (air, fuel) = (NewMap(), NewMap());
        foreach (var (side, inGroup, barrel, share) in _kinds)
        {
            var points = FuelSideSolver.Solve(side, inGroup, trims.On(barrel), _model.Fuel, Quick with { DepressionFactor = trims.Depression }, cancellation);
            for (var i = 0; i < points.GetLength(0); i++)
            {
                for (var j = 0; j < points.GetLength(1); j++)
                {
                    var own = side.At(i, j).AirKilogramsPerCycle[inGroup] * Grid.SpeedsRpm[i] / 120 * trims.Air;
                    Add(air, share, i, j, own + points[i, j].BledAirKilogramsPerSecond);
                    Add(fuel, share, i, j, points[i, j].FuelKilogramsPerSecond);
                }
            }
        }

        var lean = _model.Fuel.StoichiometricRatio / _model.Ambient.DryAirFraction;
        for (var b = 0; b <= _banks; b++)
        {
            for (var i = 0; i < Grid.SpeedsRpm.Count; i++)
            {
                for (var j = 0; j < Grid.ThrottleDegrees.Count; j++)
                {
                    air[b, i, j] = air[b, i, j] < NoFuel ? 1 / MostLambda : Math.Max(1 / MostLambda, lean * fuel[b, i, j] / air[b, i, j]);
                }
            }
        }

        return air;
    }

    /// <summary>Absolute pressure behind the plate, Pa, [speed, throttle], of the first kind of barrel: how an opening is told from a pressure.</summary>
    internal double[,] ManifoldPressure()
    {
        var (side, inGroup, barrel, _) = _kinds[0];
        var points = FuelSideSolver.Solve(side, inGroup, barrel, _model.Fuel);
        var map = new double[points.GetLength(0), points.GetLength(1)];
        for (var i = 0; i < map.GetLength(0); i++)
        {
            for (var j = 0; j < map.GetLength(1); j++)
            {
                map[i, j] = points[i, j].ManifoldPressurePascals;
            }
        }

        return map;
    }

    private double[,,] NewMap() => new double[_banks + 1, Grid.SpeedsRpm.Count, Grid.ThrottleDegrees.Count];

    private static void Add(double[,,] map, double[] share, int i, int j, double value)
    {
        for (var b = 0; b < share.Length; b++)
        {
            map[b, i, j] += share[b] * value;
        }
    }
}
