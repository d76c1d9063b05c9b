using Tickover.Workshop.Calibration;

namespace Tickover.Cli.Input;

/// <summary>The runs a forecast rests on.</summary>
/// <param name="Runs">The runs; none where the priors have to do.</param>
internal sealed record ForecastRuns(IReadOnlyList<CalibrationRun> Runs)
{
    /// <summary>Makes the forecast.</summary>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The forecast, or why the readings give none.</returns>
    public Answer<ForecastMade> Make(CancellationToken cancellation)
    {
        if (Runs.Count == 0)
        {
            return new ForecastMade(new PriorForecast(), null);
        }

        var outcome = Calibrator.Fit(Runs, cancellation: cancellation);
        return outcome.Fit is { } fit ? new ForecastMade(fit, fit) : Answer<ForecastMade>.No(string.Join(Environment.NewLine, outcome.Refusals));
    }
}
