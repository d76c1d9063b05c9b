namespace Tickover.Cli.Json;

/// <summary>One reading, in a <see cref="LeakReport"/>; pressures above the air around, Pa.</summary>
/// <param name="Minutes">Time.</param>
/// <param name="Gauge">As read.</param>
/// <param name="Corrected">At the mean temperature and the first barometer.</param>
/// <param name="Fitted">On the fitted line.</param>
internal sealed record LeakReportPoint(double Minutes, double Gauge, double Corrected, double Fitted);
