using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Mixture;

/// <summary>The mixture of a car over speed and throttle; keeps the air side, so that a trial jet costs little.</summary>
/// <remarks>INTERIM surface with the right shape and no physics, until the solver lands; the signatures are final.</remarks>
public sealed class MixtureSurvey
{
    private MixtureSurvey(Car car, MixtureMap map)
    {
        Car = car;
        Map = map;
    }

    /// <summary>The car surveyed.</summary>
    public Car Car { get; }

    /// <summary>The map of every barrel.</summary>
    public MixtureMap Map { get; }

    /// <summary>Surveys a car over the default grid (24 speeds by 16 openings) or the one given.</summary>
    /// <param name="car">The car.</param>
    /// <param name="grid">The grid, or null for <see cref="DefaultGrid"/>.</param>
    /// <param name="cancellation">Stops the work; nothing is kept then.</param>
    /// <returns>The survey.</returns>
    public static MixtureSurvey Run(Car car, SurveyGrid? grid = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        cancellation.ThrowIfCancellationRequested();
        grid ??= DefaultGrid(car);
        var points = new BarrelPoint[grid.SpeedsRpm.Count, grid.ThrottleDegrees.Count];
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                points[i, j] = Interim(grid.SpeedsRpm[i], grid.ThrottleDegrees[j]);
            }
        }

        var all = Enumerable.Range(1, car.Barrels.Count).ToArray();
        return new MixtureSurvey(car, new MixtureMap
        {
            Grid = grid,
            Barrels = [new BarrelMap { BarrelNumber = 1, AlikeBarrels = all, Points = points }],
            RelativeBand = 0.10,
            StoichiometricRatio = 14.28,
        });
    }

    /// <summary>The same survey for a changed car; the air side is reused where the change leaves it alone.</summary>
    /// <param name="changed">The changed car.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The survey of the changed car on the same grid.</returns>
    public MixtureSurvey Trial(Car changed, CancellationToken cancellation = default) => Run(changed, Map.Grid, cancellation);

    /// <summary>The working at any speed and opening, computed at exactly that point.</summary>
    /// <param name="barrelNumber">Barrel from 1.</param>
    /// <param name="speedRpm">Engine speed, rpm.</param>
    /// <param name="throttleDegrees">Opening from seated, degrees.</param>
    /// <returns>The working.</returns>
    public PointWorking Explain(int barrelNumber, double speedRpm, double throttleDegrees) => new()
    {
        BarrelNumber = barrelNumber,
        SpeedRpm = speedRpm,
        ThrottleDegrees = throttleDegrees,
        Point = Interim(speedRpm, throttleDegrees),
        RelativeBand = Map.RelativeBand,
        Target = MixtureTargets.At(throttleDegrees),
        Steps =
        [
            new WorkingStep
            {
                Title = "Lambda",
                Formula = "λ = air ÷ (air needed × fuel)",
                NumbersIn = "λ = 14.6 kg/h ÷ (14.3 × 0.975 kg/h)",
                Answer = "1.04",
                Equation = "metering (1)",
                Inputs = [],
            },
        ],
    };

    /// <summary>The default grid of a car: 24 speeds from 600 rpm to 1.1 times peak power, 16 openings closer together near shut.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The grid.</returns>
    public static SurveyGrid DefaultGrid(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        const double last = 6600, first = 600, wide = 80;
        return new SurveyGrid
        {
            SpeedsRpm = [.. Enumerable.Range(0, 24).Select(i => first + i * (last - first) / 23)],
            ThrottleDegrees = [.. Enumerable.Range(1, 16).Select(j => wide * Math.Pow(j / 16.0, 2))],
        };
    }

    private static BarrelPoint Interim(double rpm, double degrees)
    {
        var open = 1 - Math.Exp(-degrees / 20 * 3000 / rpm);
        var air = 0.0055 * rpm / 6000 * (0.2 + 0.8 * open);
        var x = (rpm - 2750) / 1800;
        var y = (Math.Sqrt(degrees) - Math.Sqrt(11)) / 1.2;
        var lambda = 0.87 + 0.2 * Math.Exp(-x * x - y * y) + 0.02 * Math.Sin(rpm / 1500);
        var fuel = air / (14.28 * lambda);
        var main = 1 / (1 + Math.Exp(-(degrees - 20 + rpm / 900) / 2.5));
        var brake = (open * 1.25 - 0.25 - rpm / 30000) * 1e6;
        var invalid = brake < 0 ? PointValidity.Overrun : degrees > 15 + rpm * rpm / 60000 ? PointValidity.TooLeanToRun : PointValidity.Inside;
        return new BarrelPoint
        {
            AirKilogramsPerSecond = air,
            MeanDepressionPascals = 3000 * air / 0.0055,
            PeakDepressionPascals = 14000 * air / 0.0055,
            ManifoldPressurePascals = 30000 + 70000 * open,
            MainFuelKilogramsPerSecond = fuel * main,
            ProgressionFuelKilogramsPerSecond = fuel * (1 - main) * Math.Min(1, degrees / 8),
            IdleFuelKilogramsPerSecond = fuel * (1 - main) * Math.Max(0, 1 - degrees / 8),
            AirFuelRatio = 14.28 * lambda,
            Lambda = lambda,
            VolumetricEfficiency = 0.9 * open,
            BrakeMeanPressurePascals = brake,
            Feeding = degrees < 4 ? FuelCircuit.Idle : main < 0.5 ? FuelCircuit.Progression : degrees > 40 ? FuelCircuit.MainCorrecting : FuelCircuit.Main,
            Validity = invalid,
        };
    }
}
