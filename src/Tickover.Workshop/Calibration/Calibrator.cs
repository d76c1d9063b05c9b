using Tickover.Physics.Estimation;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>Fits the model's unknowns to readings of a car.</summary>
public static class Calibrator
{
    private static readonly double[] FieldDeviations = [0.004, 0.007, 0.012, 0.02, 0.03, 0.045, 0.065, 0.09, 0.13];
    private const double FirstDeviation = 0.045;
    private const double LikelyDeviation = 0.04;          // what a good one-dimensional model leaves over, assumed
    private const double DeviationSpread = 0.5;           // of its logarithm
    private static readonly double[] NoiseFactors = [0.35, 0.5, 0.7, 1, 1.4, 2];
    private const double NoiseSpread = 0.5;               // of the logarithm of what readings scatter over what was expected of them

    /// <summary>Fits.</summary>
    /// <param name="runs">The runs; all of one car, each with the jets it had.</param>
    /// <param name="settings">How; null for the defaults.</param>
    /// <param name="progress">Told what is being done, or null.</param>
    /// <param name="cancellation">Stops the work; nothing is kept then.</param>
    /// <returns>The fit, or why there is none.</returns>
    public static CalibrationOutcome Fit(
        IReadOnlyList<CalibrationRun> runs, CalibrationSettings? settings = null, IProgress<string>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(runs);
        var how = settings ?? new CalibrationSettings();
        if (Refusal.OfRuns(runs) is { Count: > 0 } unfit)
        {
            return new CalibrationOutcome(null, unfit);
        }

        progress?.Report("Solving the air side");
        var air = new SurveyAir();
        var work = new CalibrationWork(runs, how, air, cancellation);
        if (Refusal.OfPoints(work, how) is { Count: > 0 } useless)
        {
            return new CalibrationOutcome(null, useless);
        }

        progress?.Report($"Fitting {work.Unknowns.Count} unknowns to {work.Points.Count} readings");
        var first = Robust(work, how, cancellation);
        var weights = first.Weights.Take(work.Points.Count).ToArray();
        if (Refusal.OfWeights(weights) is { Count: > 0 } scattered)
        {
            return new CalibrationOutcome(null, scattered);
        }

        var noise = work.Noise.Zip(weights, (n, w) => n / Math.Sqrt(w)).ToArray();
        var second = Correlated(work, first.Parameters, noise, cancellation);
        return new CalibrationOutcome(Finish(work, runs, how, (second.Result, weights, second.Noise, second.Deviation), air), []);
    }

    /// <summary>Rows of the first fit: readings by their own noise and what a model usually leaves over, then priors.</summary>
    internal static double[] RobustRows(CalibrationWork work, double[] values, CancellationToken cancellation) =>
        work.Rows(values, work.Errors(values, cancellation).Select((e, i) => e / Root(work.Noise[i], FirstDeviation)));

    private static LeastSquaresResult Robust(CalibrationWork work, CalibrationSettings how, CancellationToken cancellation) =>
        LeastSquares.Solve(
            values => RobustRows(work, values, cancellation),
            new double[work.Unknowns.Count],
            work.Settings with { HuberLimit = how.HuberLimit, RobustRows = work.Points.Count },
            cancellation);

    // What the model leaves over and how much readings really scatter are chosen at the parameters of the first fit, where model and
    // readings are near each other already: one after the other, and the first once more.
    private static (LeastSquaresResult Result, double[] Noise, double Deviation) Correlated(
        CalibrationWork work, IReadOnlyList<double> start, double[] expected, CancellationToken cancellation)
    {
        var errors = work.Errors(start, cancellation);
        var first = Deviation(work, errors, expected);
        var factor = NoiseFactors.MaxBy(f => Likelihood(work, errors, first, Scaled(expected, f)) - Unlikely(f, 1, NoiseSpread));
        var noise = Scaled(expected, factor);
        var deviation = Deviation(work, errors, noise);
        var field = work.Field(deviation, noise);
        var result = LeastSquares.Solve(values => work.Rows(values, field.Whiten(work.Errors(values, cancellation))), start, work.Settings, cancellation);
        return (result, noise, deviation);
    }

    private static double Deviation(CalibrationWork work, double[] errors, double[] noise) =>
        FieldDeviations.MaxBy(d => Likelihood(work, errors, d, noise) - Unlikely(d, LikelyDeviation, DeviationSpread));

    private static double Likelihood(CalibrationWork work, double[] errors, double deviation, double[] noise) => work.Field(deviation, noise).LogLikelihood(errors);

    private static double[] Scaled(double[] noise, double factor) => Array.ConvertAll(noise, n => n * factor);

    private static double Unlikely(double value, double likely, double spread)
    {
        var x = Math.Log(value / likely) / spread;
        return 0.5 * x * x;
    }

    private static CarFit Finish(
        CalibrationWork work,
        IReadOnlyList<CalibrationRun> runs,
        CalibrationSettings how,
        (LeastSquaresResult Result, double[] Weights, double[] Noise, double Deviation) found,
        SurveyAir air)
    {
        var values = found.Result.Parameters;
        var (fitted, jacobian) = work.Linear(values);
        var residuals = work.Points.Select((p, i) => Math.Log(p.Point.Lambda) - fitted[i]).ToArray();
        var posterior = new Posterior(work.Field(found.Deviation, found.Noise), jacobian, residuals, [.. work.Unknowns.Select(u => u.PriorDeviation)]);
        var covariance = posterior.Covariance();
        var (errors, deviations) = posterior.LeaveOut(work.Groups(), found.Noise, values);
        var expected = work.Predicted(new double[values.Count], CancellationToken.None);
        var unknowns = work.Unknowns.Select((u, i) => new FittedUnknown(u, values[i], Math.Sqrt(covariance[i, i]))).ToArray();
        return new CarFit(posterior, air, how)
        {
            Runs = runs,
            Unknowns = unknowns,
            FieldDeviation = found.Deviation,
            Points = [.. work.Points.Select((p, i) => p with
            {
                ExpectedLambda = Math.Exp(expected[i]),
                FittedLambda = Math.Exp(fitted[i]),
                Weight = found.Weights[i],
                LeftOutError = errors[i],
                LeftOutDeviation = deviations[i],
            })],
            Remarks = FitRemarks.Of(unknowns, covariance, found.Weights),
            Ending = found.Result.Ending,
            Evaluations = work.Computed,
        };
    }

    private static double Root(double one, double other) => Math.Sqrt(one * one + other * other);
}
