using Tickover.Workshop.Calibration;

namespace Tickover.Cli.Input;

/// <summary>A forecast, and the fit where it is one.</summary>
/// <param name="Forecast">The forecast.</param>
/// <param name="Fit">The fit; null where the priors have to do.</param>
internal sealed record ForecastMade(IForecast Forecast, CarFit? Fit);
