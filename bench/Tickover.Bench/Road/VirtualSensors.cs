namespace Tickover.Bench.Road;

/// <summary>How instruments and exhaust distort a drive. The defaults follow the trade reference, section 6.</summary>
internal sealed record VirtualSensors
{
    /// <summary>Rows a second.</summary>
    public double RowsPerSecond { get; init; } = 10;

    /// <summary>Mass of gas between valves and probe, kg: 35 litres hot.</summary>
    public double PipeKilograms { get; init; } = 0.014;

    /// <summary>First-order lag of the λ sensor, s.</summary>
    public double SensorLag { get; init; } = 0.1;

    /// <summary>Noise of λ from row to row, one standard deviation.</summary>
    public double LambdaNoise { get; init; } = 0.006;

    /// <summary>Wander of λ over a second or so, one standard deviation; twice as much at idle.</summary>
    public double LambdaWander { get; init; } = 0.008;

    /// <summary>Drift of λ over the whole log.</summary>
    public double LambdaDrift { get; init; } = 0.006;

    /// <summary>What each sensor reads too much, by bank from 1; shorter lists mean nothing.</summary>
    public IReadOnlyList<double> LambdaOffsets { get; init; } = [];

    /// <summary>Noise of the speed, rpm.</summary>
    public double SpeedNoise { get; init; } = 12;

    /// <summary>Noise of the throttle, degrees.</summary>
    public double ThrottleNoise { get; init; } = 0.12;

    /// <summary>Noise of the pressure, Pa.</summary>
    public double PressureNoise { get; init; } = 400;

    /// <summary>What the pressure sensor reads too much, Pa.</summary>
    public double PressureOffset { get; init; } = 500;

    /// <summary>Richest and leanest λ the sensor shows.</summary>
    public (double Richest, double Leanest) Range { get; init; } = (0.68, 1.36);

    /// <summary>Part by which λ goes lean for some tenths of a second after a fast opening.</summary>
    public double TipInLean { get; init; } = 0.10;

    /// <summary>Whether there is a probe for each bank; else one for all.</summary>
    public bool ProbeForEachBank { get; init; }
}
