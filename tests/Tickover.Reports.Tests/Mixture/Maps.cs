using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

/// <summary>Maps made by hand, from a function of speed and opening.</summary>
internal static class Maps
{
    internal const double Stoichiometric = 14.4;

    internal static MixtureMap Of(Func<double, double, BarrelPoint> point, int speeds = 24, int openings = 16)
    {
        var grid = new SurveyGrid
        {
            SpeedsRpm = [.. Enumerable.Range(0, speeds).Select(i => 600 + 6000.0 * i / Math.Max(1, speeds - 1))],
            ThrottleDegrees = [.. Enumerable.Range(1, openings).Select(j => 80 * Math.Pow((double)j / openings, 2))],
        };
        var points = new BarrelPoint[speeds, openings];
        for (var i = 0; i < speeds; i++)
        {
            for (var j = 0; j < openings; j++)
            {
                points[i, j] = point(grid.SpeedsRpm[i], grid.ThrottleDegrees[j]);
            }
        }

        return new MixtureMap
        {
            Grid = grid,
            Barrels = [new BarrelMap { BarrelNumber = 1, AlikeBarrels = [1, 2, 3, 4], Points = points }],
            RelativeBand = 0.10,
            StoichiometricRatio = Stoichiometric,
        };
    }

    internal static BarrelPoint Point(double lambda, PointValidity validity = PointValidity.Inside, FuelCircuit feeding = FuelCircuit.Main) => new()
    {
        Lambda = lambda,
        AirFuelRatio = lambda * Stoichiometric,
        AirKilogramsPerSecond = 0.004,
        MainFuelKilogramsPerSecond = feeding >= FuelCircuit.Main ? 2e-4 : 2e-5,
        ProgressionFuelKilogramsPerSecond = feeding == FuelCircuit.Progression ? 2e-4 : 2e-5,
        IdleFuelKilogramsPerSecond = feeding == FuelCircuit.Idle ? 2e-4 : 2e-5,
        WellDropMetres = feeding == FuelCircuit.MainCorrecting ? 0.02 : 0.005,
        BrakeMeanPressurePascals = validity.HasFlag(PointValidity.Overrun) ? -1e5 : 5e5,
        Feeding = feeding,
        Validity = validity,
    };

    /// <summary>A map with a lean hollow round 2,750 rpm and 11°, the overrun below and the circuits one after another.</summary>
    internal static MixtureMap Typical(double richer = 0) => Of((rpm, opening) =>
    {
        var (x, y) = ((rpm - 2750) / 1800, (Math.Sqrt(opening) - Math.Sqrt(11)) / 1.2);
        var feeding = opening < 4 ? FuelCircuit.Idle : opening < 20 ? FuelCircuit.Progression : opening < 45 ? FuelCircuit.Main : FuelCircuit.MainCorrecting;
        var brake = opening - rpm / 300;
        return Point(0.9 + 0.2 * Math.Exp(-x * x - y * y) - (opening < 20 ? richer : 0), brake < 0 ? PointValidity.Overrun : PointValidity.Inside, feeding)
            with
        { BrakeMeanPressurePascals = brake * 1e4 };
    });
}
