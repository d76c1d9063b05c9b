using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Fit;

/// <summary>Three hundred readings of a six whose hidden figures differ from its description.</summary>
internal static class FitCase
{
    private const int Count = 300;
    private const double Noise = 0.012;
    private const int Seed = 20261126;

    public static CalibrationRun Make()
    {
        var car = Samples.Read("tern-2800");
        var truth = CarDocument.Change(car, [new("barrel.auxiliaryGain", "2.75"), new("barrel.mainAirDischarge", "0.66"), new("barrel.floatLevel", "5.8 mm")]).Car!;
        var map = MixtureSurvey.Run(truth).Map;
        var points = map.Barrels[0].Points;
        var random = new Random(Seed);
        var readings = new List<MixturePoint>();
        while (readings.Count < Count)
        {
            var (i, j) = (random.Next(points.GetLength(0)), random.Next(points.GetLength(1)));
            if (points[i, j].Lambda is > 0.68 and < 1.3 && !points[i, j].Validity.HasFlag(PointValidity.Overrun))
            {
                var gauss = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
                readings.Add(new MixturePoint
                {
                    Regime = Regime.Cruise,
                    SpeedRpm = map.Grid.SpeedsRpm[i],
                    ThrottleDegrees = map.Grid.ThrottleDegrees[j],
                    Lambda = points[i, j].Lambda * Math.Exp(Noise * gauss),
                    LambdaSigma = Noise,
                    Count = 50,
                });
            }
        }

        return new CalibrationRun("bench", car, readings);
    }
}
