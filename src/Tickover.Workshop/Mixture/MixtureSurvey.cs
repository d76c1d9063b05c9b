using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Mixture;

/// <summary>The mixture of a car over speed and throttle; keeps the air side, so that a trial jet costs little.</summary>
/// <remarks>
/// Gas exchange by crank angle, metering on the instantaneous depression: docs/physics/breathing.md and metering.md.
/// Not calibrated to the car: good to some ±10 %. Immutable; safe to share between threads once made.
/// </remarks>
public sealed class MixtureSurvey
{
    private const double UncalibratedBand = 0.10;      // design, section 4: absolute prediction is honest only to some 10 %
    private const int SpeedCount = 24;
    private const double FirstSpeedRpm = 600;
    private const double BeyondPeak = 1.1;

    // Fifteen openings, degrees; the sixteenth is wide open. Closest where idle, progression and main hand over to each other,
    // for there the mixture turns within a few degrees; far apart where the plate hardly matters any more.
    private static readonly double[] Openings = [0.8, 2, 3.5, 5, 6.5, 8, 9.5, 11, 12.5, 14.5, 18, 23, 30, 40, 56];

    private readonly SurveyAir _air;
    private readonly SurveyModel _model;

    private MixtureSurvey(Car car, SurveyModel model, SurveyAir air, MixtureMap map) => (Car, _model, _air, Map) = (car, model, air, map);

    /// <summary>The car surveyed.</summary>
    public Car Car { get; }

    /// <summary>The map of every barrel.</summary>
    public MixtureMap Map { get; }

    /// <summary>Surveys a car over the default grid (24 speeds by 16 openings) or the one given.</summary>
    /// <param name="car">The car.</param>
    /// <param name="grid">The grid, or null for <see cref="DefaultGrid"/>; speeds above zero, openings zero or above.</param>
    /// <param name="cancellation">Stops the work; nothing is kept then.</param>
    /// <returns>The survey.</returns>
    public static MixtureSurvey Run(Car car, SurveyGrid? grid = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        return Solve(car, grid ?? DefaultGrid(car), new SurveyAir(), cancellation);
    }

    /// <summary>The same survey for a changed car; the air side is reused where the change leaves it alone.</summary>
    /// <param name="changed">The changed car.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The survey of the changed car on the same grid.</returns>
    public MixtureSurvey Trial(Car changed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(changed);
        return Solve(changed, Map.Grid, new SurveyAir(_air), cancellation);
    }

    /// <summary>The working at any speed and opening, computed at exactly that point.</summary>
    /// <param name="barrelNumber">Barrel from 1.</param>
    /// <param name="speedRpm">Engine speed, rpm, above zero.</param>
    /// <param name="throttleDegrees">Opening from seated, degrees, zero or above.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such barrel, or a speed or opening outside its range.</exception>
    public PointWorking Explain(int barrelNumber, double speedRpm, double throttleDegrees)
    {
        if (barrelNumber < 1 || barrelNumber > Car.Barrels.Count)
        {
            throw new ArgumentOutOfRangeException(nameof(barrelNumber), barrelNumber, $"barrels 1 to {Car.Barrels.Count}");
        }

        var grid = new SurveyGrid { SpeedsRpm = [speedRpm], ThrottleDegrees = [throttleDegrees] };
        var (group, inGroup) = Place(_model.Engine, barrelNumber - 1);
        var air = new SurveyAir().Get(_model, group, grid, CancellationToken.None);
        var fuel = FuelSideSolver.Solve(air, inGroup, _model.Engine.Barrels[barrelNumber - 1], _model.Fuel)[0, 0];
        var point = new PointAssembly(_model, air, inGroup).Point(0, 0, fuel);
        return new PointWorking
        {
            BarrelNumber = barrelNumber,
            SpeedRpm = speedRpm,
            ThrottleDegrees = throttleDegrees,
            Point = point,
            RelativeBand = Map.RelativeBand,
            Target = MixtureTargets.At(throttleDegrees),
            Steps = new WorkingSteps(Car, _model, air, inGroup, barrelNumber, fuel, point).All(),
        };
    }

    /// <summary>The default grid of a car: 24 speeds from 600 rpm to 1.1 times peak power, 16 openings from nearly shut to wide open, closest together where circuits hand over.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The grid.</returns>
    public static SurveyGrid DefaultGrid(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        const double round = 10;
        var last = Math.Max(
            BeyondPeak * car.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI), FirstSpeedRpm + SpeedCount * round);
        var wide = 90 - car.Barrels.Max(b => b.Figures.Si("barrel.closedAngle")) * 180 / Math.PI;
        return new SurveyGrid
        {
            SpeedsRpm = [.. Between(FirstSpeedRpm, last, SpeedCount).Select(n => Math.Round(n / round) * round)],
            ThrottleDegrees = [.. Openings, Math.Round(wide, 2)],
        };
    }

    private static IEnumerable<double> Between(double first, double last, int count) =>
        Enumerable.Range(0, count).Select(i => first + i * (last - first) / (count - 1));

    private static (IntakeGroup Group, int InGroup) Place(EngineSpec engine, int barrel)
    {
        var group = engine.Groups.First(g => g.Barrels.Contains(barrel));
        return (group, group.Barrels.ToList().IndexOf(barrel));
    }

    private static MixtureSurvey Solve(Car car, SurveyGrid grid, SurveyAir known, CancellationToken cancellation)
    {
        var model = SurveyModel.Of(car);
        var maps = new List<(string Key, BarrelMap Map)>();
        foreach (var barrel in car.Barrels)
        {
            cancellation.ThrowIfCancellationRequested();
            var spec = model.Engine.Barrels[barrel.Number - 1];
            var (group, inGroup) = Place(model.Engine, barrel.Number - 1);
            var key = AirKey.Of(model.Engine, group, model.Ambient, grid) + AirKey.Of(barrel, spec);
            var alike = maps.FindIndex(m => string.Equals(m.Key, key, StringComparison.Ordinal));
            if (alike >= 0)
            {
                var map = maps[alike].Map;
                maps[alike] = (key, map with { AlikeBarrels = [.. map.AlikeBarrels, barrel.Number] });
                continue;
            }

            var air = known.Get(model, group, grid, cancellation);
            maps.Add((key, Survey(model, air, inGroup, spec, barrel.Number, cancellation)));
        }

        return new MixtureSurvey(car, model, known, new MixtureMap
        {
            Grid = grid,
            Barrels = [.. maps.Select(m => m.Map)],
            RelativeBand = UncalibratedBand,
            StoichiometricRatio = model.Fuel.StoichiometricRatio,
        });
    }

    private static BarrelMap Survey(SurveyModel model, AirSide air, int inGroup, BarrelSpec spec, int number, CancellationToken cancellation)
    {
        var fuel = FuelSideSolver.Solve(air, inGroup, spec, model.Fuel, cancellation: cancellation);
        var assembly = new PointAssembly(model, air, inGroup);
        var points = new BarrelPoint[fuel.GetLength(0), fuel.GetLength(1)];
        for (var i = 0; i < points.GetLength(0); i++)
        {
            for (var j = 0; j < points.GetLength(1); j++)
            {
                points[i, j] = assembly.Point(i, j, fuel[i, j]);
            }
        }

        return new BarrelMap { BarrelNumber = number, AlikeBarrels = [number], Points = points };
    }
}
