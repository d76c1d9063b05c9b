namespace Tickover.Physics.Gauges;

/// <summary>A cure and what error it leaves over the scale.</summary>
public sealed record GaugeCure
{
    /// <summary>What is done.</summary>
    public required GaugeCureKind Kind { get; init; }

    /// <summary>Resistor in the wire, Ω; 0 for none.</summary>
    public double SeriesOhms { get; init; }

    /// <summary>Resistor to earth, Ω; null for none.</summary>
    public double? ParallelOhms { get; init; }

    /// <summary>How far the arm is bent so that the wiper stands further towards full, rad.</summary>
    public double BendRadians { get; init; }

    /// <summary>The needle over the scale.</summary>
    public required IReadOnlyList<GaugeScalePoint> Scale { get; init; }

    /// <summary>Root mean square of the error, of the full scale.</summary>
    public double RootMeanSquare => Math.Sqrt(Scale.Average(p => p.Error * p.Error));

    /// <summary>The largest error, of the full scale.</summary>
    public GaugeScalePoint Worst => Scale.MaxBy(p => Math.Abs(p.Error));

    /// <summary>Heat in the resistor that gets more of it, at a voltage, the gauge's own resistance left out: what it must stand.</summary>
    /// <param name="volts">Voltage of the car, V.</param>
    /// <param name="leastOhms">Least resistance of the sender, Ω; not negative.</param>
    /// <returns>W; 0 without resistors.</returns>
    public double HeatWatts(double volts, double leastOhms)
    {
        Precondition.NotNegative(leastOhms);
        var sender = ParallelOhms is { } beside ? leastOhms * beside / (leastOhms + beside) : leastOhms;
        var current = SeriesOhms + sender > 0 ? volts / (SeriesOhms + sender) : 0;
        var series = SeriesOhms * current * current; // gauges (15)
        var parallel = ParallelOhms is { } ohms ? volts * volts / ohms : 0;
        return Math.Max(series, parallel);
    }
}
