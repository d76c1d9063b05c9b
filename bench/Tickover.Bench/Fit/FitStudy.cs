using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Tickover.Physics.Estimation;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Fit;

/// <summary>How long a fit and a choice take, and the fit's own problem handed to a peer.</summary>
internal static class FitStudy
{
    private const int Times = 5;

    /// <summary>Times a fit and a search; the machine is warm after the first.</summary>
    public static int Run()
    {
        var c = CultureInfo.InvariantCulture;
        var run = FitCase.Make();
        var seconds = new List<double>();
        CarFit? fit = null;
        for (var k = 0; k < Times; k++)
        {
            var watch = Stopwatch.StartNew();
            fit = Calibrator.Fit([run]).Fit!;
            seconds.Add(watch.Elapsed.TotalSeconds);
        }

        Console.WriteLine(string.Create(c, $"fit of {fit!.Unknowns.Count} unknowns to {fit.Points.Count} readings: first {seconds[0]:0.00} s, then {seconds.Skip(1).Min():0.00} to {seconds.Skip(1).Max():0.00} s; {fit.Evaluations} maps; {fit.Ending}; left-out error {100 * fit.LeftOutError:0.00} %, 90 % band holds {100 * fit.LeftOutCoverage:0} %"));
        var search = Stopwatch.StartNew();
        var advice = JetChooser.Choose(run.Car, fit);
        Console.WriteLine(string.Create(c, $"search: {advice.Tried:N0} sets x {advice.Now.Map.LogLambda.Count} points: {search.Elapsed.TotalSeconds:0.00} s with the sets chosen computed in full; quick reckoning within {100 * advice.QuickReckoning:0.0} %"));
        return 0;
    }

    /// <summary>Answers parameter vectors with residuals, a line of JSON each: for a peer that minimises the same.</summary>
    public static int Serve()
    {
        var work = Problem();
        Console.WriteLine(JsonSerializer.Serialize(new { unknowns = work.Unknowns.Count, readings = work.Points.Count, huber = new CalibrationSettings().HuberLimit }));
        while (Console.ReadLine() is { Length: > 0 } line)
        {
            var values = JsonSerializer.Deserialize<double[]>(line)!;
            Console.WriteLine(JsonSerializer.Serialize(Calibrator.RobustRows(work, values, CancellationToken.None)));
        }

        return 0;
    }

    /// <summary>Minimises the same by our own solver and prints what it found.</summary>
    public static int Ours()
    {
        var work = Problem();
        var watch = Stopwatch.StartNew();
        var found = LeastSquares.Solve(
            values => Calibrator.RobustRows(work, values, CancellationToken.None),
            new double[work.Unknowns.Count],
            work.Settings with { HuberLimit = new CalibrationSettings().HuberLimit, RobustRows = work.Points.Count, CostTolerance = 1e-8, ParameterTolerance = 1e-4, MaximumSteps = 50 });
        Console.WriteLine(JsonSerializer.Serialize(new { seconds = watch.Elapsed.TotalSeconds, cost = found.Cost, evaluations = found.Evaluations, ending = found.Ending.ToString(), values = found.Parameters, priors = work.Unknowns.Select(u => u.PriorDeviation) }));
        return 0;
    }

    private static CalibrationWork Problem() => new([FitCase.Make()], new CalibrationSettings(), new SurveyAir(), CancellationToken.None);
}
