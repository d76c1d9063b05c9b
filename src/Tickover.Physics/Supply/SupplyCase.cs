namespace Tickover.Physics.Supply;

/// <summary>One fault in one size with what it would show.</summary>
/// <param name="faulty">The line with the fault.</param>
/// <param name="forecast">What each reading would show.</param>
internal sealed class SupplyCase(FaultyLine faulty, IReadOnlyDictionary<SupplyReadingKind, double> forecast)
{
    // Share of the forecast and floor in the reading's own unit: gauge and stopwatch together with what the model leaves out; assumed.
    private static readonly Dictionary<SupplyReadingKind, (double Share, double Floor)> Errors = new()
    {
        [SupplyReadingKind.DeadHead] = (0.08, 800),
        [SupplyReadingKind.FlowBeforeFilter] = (0.10, 4e-7),
        [SupplyReadingKind.FlowAtChamber] = (0.10, 4e-7),
        [SupplyReadingKind.Suction] = (0.15, 1500),
        [SupplyReadingKind.PressureHeld] = (0, 0.12),
        [SupplyReadingKind.PumpVolts] = (0.02, 0.2),
    };

    public SupplyFaultKind Kind => faulty.Kind;

    public IReadOnlyDictionary<SupplyReadingKind, double> Forecast => forecast;

    /// <summary>Its logarithm while it is being weighed, then its probability, 1.</summary>
    public double Weight { get; set; }

    public double Error(SupplyReadingKind kind) => Errors[kind].Share * Math.Abs(forecast[kind]) + Errors[kind].Floor;

    public double LogDensity(SupplyReadingKind kind, double value)
    {
        var error = Error(kind);
        var away = (value - forecast[kind]) / error;
        return -away * away / 2 - Math.Log(error);
    }

    public double LogLikelihood(IReadOnlyDictionary<SupplyReadingKind, double> readings) =>
        readings.Where(reading => forecast.ContainsKey(reading.Key)).Sum(reading => LogDensity(reading.Key, reading.Value));

    public double Misfit(IReadOnlyDictionary<SupplyReadingKind, double> readings) =>
        readings.Where(reading => forecast.ContainsKey(reading.Key))
            .Select(reading => Math.Abs(reading.Value - forecast[reading.Key]) / Error(reading.Key))
            .DefaultIfEmpty(0)
            .Max();
}
