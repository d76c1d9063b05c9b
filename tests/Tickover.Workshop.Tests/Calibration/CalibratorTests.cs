using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Tests.Calibration;

/// <summary>A fit to readings of a car whose hidden figures differ.</summary>
public sealed class CalibratorTests
{
    private static readonly Car Tern = Drives.Sample("tern-2800");

    private static readonly Car Truth = Drives.Sample("tern-2800", ("barrel.auxiliaryGain", "2.75"), ("barrel.mainAirDischarge", "0.66"), ("barrel.floatLevel", "6.8 mm"));

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void A_fitted_model_foretells_other_jets_where_the_model_alone_is_off()
    {
        var fit = Calibrator.Fit([new("first run", Tern, Drives.Of(Truth, 1))], cancellation: Cancellation).Fit!;
        var jets = new[] { ("barrel.mainJet", "125"), ("barrel.idleJet", "55") };
        var truth = Inside(MixtureSurvey.Run(Drives.Sample("tern-2800", [("barrel.auxiliaryGain", "2.75"), ("barrel.mainAirDischarge", "0.66"), ("barrel.floatLevel", "6.8 mm"), .. jets])).Map);
        var other = Drives.Sample("tern-2800", jets);
        var alone = Flat(MixtureSurvey.Run(other).Map);
        var foretold = fit.Predict(other, Cancellation);

        var before = truth.Average(t => Math.Abs(Math.Log(alone[t.Point] / t.Lambda)));
        var after = truth.Average(t => Math.Abs(Math.Log(foretold.Lambda(t.Point) / t.Lambda)));
        var inBand = truth.Average(t => foretold.Band(t.Point) is var (rich, lean) && t.Lambda >= rich && t.Lambda <= lean ? 1.0 : 0.0);
        TestContext.Current.SendDiagnosticMessage($"before {before:0.0000} after {after:0.0000} in band {inBand:0.00} field {fit.FieldDeviation} evaluations {fit.Evaluations} left out {fit.LeftOutError:0.000} {fit.LeftOutCoverage:0.00}");
        foreach (var u in fit.Unknowns)
        {
            TestContext.Current.SendDiagnosticMessage($"{u.Unknown.Key} {u.Value:0.000} ± {u.Deviation:0.000} prior {u.Unknown.PriorDeviation}");
        }

        Assert.True(after < 0.4 * before, $"{after} against {before}");
        Assert.InRange(inBand, 0.8, 1.0);
    }

    private static List<(int Point, double Lambda)> Inside(MixtureMap map)
    {
        var flat = Flat(map);
        return [.. flat.Select((l, i) => (i, l)).Where(p => p.l is > 0.65 and < 1.3)];
    }

    private static double[] Flat(MixtureMap map) => [.. map.Barrels[0].Points.Cast<BarrelPoint>().Select(p => p.Lambda)];
}
