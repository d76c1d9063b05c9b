using System.Diagnostics;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Tests.Calibration;

namespace Tickover.Workshop.Tests.JetChoice;

/// <summary>A choice from readings, judged on the car they came from.</summary>
public sealed class JetChooserTests
{
    private static readonly (string, string)[] Hidden = [("barrel.auxiliaryGain", "2.75"), ("barrel.mainAirDischarge", "0.66"), ("barrel.floatLevel", "6.8 mm")];

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Jets_chosen_from_one_run_bring_the_real_car_into_target()
    {
        var car = Drives.Sample("tern-2800", ("barrel.mainJet", "140"), ("barrel.idleJet", "60"));
        var truth = Drives.Sample("tern-2800", [("barrel.mainJet", "140"), ("barrel.idleJet", "60"), .. Hidden]);
        var watch = Stopwatch.StartNew();
        var fit = Calibrator.Fit([new("run", car, Drives.Of(truth, 3))], cancellation: Cancellation).Fit!;
        var fitted = watch.Elapsed;
        var advice = JetChooser.Choose(car, fit, cancellation: Cancellation);
        TestContext.Current.SendDiagnosticMessage($"fit {fitted.TotalSeconds:0.0} s, chosen {watch.Elapsed.TotalSeconds:0.0} s, tried {advice.Tried}, quick {advice.QuickReckoning:0.000}");
        foreach (var p in new[] { advice.Now, advice.IfOrdered, advice.LeastEffort })
        {
            TestContext.Current.SendDiagnosticMessage($"cost {p.Cost:0.000} in target {p.InTargetOverall:0.00}: {string.Join(", ", p.InTarget.Select(t => $"{t.Regime} {t.Probability:0.00}"))}; {string.Join(", ", p.Changes.Select(c => $"{c.Label} {c.From} to {c.To} ({string.Join(' ', c.Effects.Select(e => $"{e.Regime} {100 * e.Part:+0.0;-0.0}%"))})"))}");
            var real = Tickover.Workshop.Cars.CarDocument.Change(p.Car, Hidden.Take(2).Select(h => KeyValuePair.Create(h.Item1, h.Item2))).Car!;
            var map = MixtureSurvey.Run(real).Map;
            var weights = RoadUse.Weights(map, 6000);
            var share = map.Barrels[0].Points.Cast<BarrelPoint>().Select((q, i) => (q.Lambda, Band: MixtureTargets.At(map.Grid.ThrottleDegrees[i % map.Grid.ThrottleDegrees.Count]), W: weights[i]))
                .Sum(q => q.Lambda >= q.Band.Richest && q.Lambda <= q.Band.Leanest ? q.W : 0);
            TestContext.Current.SendDiagnosticMessage($"truly {share:0.00}");
        }

        Assert.True(advice.Tried >= 100_000, $"{advice.Tried}");
    }
}
