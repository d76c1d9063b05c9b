namespace Tickover.Workshop.Logs;

/// <summary>The mixture over one steady stretch, averaged: what a calibration is fitted to.</summary>
public sealed record MixturePoint
{
    /// <summary>Bank from 1 whose exhaust was measured; null where one probe sees all banks.</summary>
    public int? Bank { get; init; }

    /// <summary>What the engine was doing.</summary>
    public required Regime Regime { get; init; }

    /// <summary>Mean engine speed, rpm.</summary>
    public required double SpeedRpm { get; init; }

    /// <summary>Mean opening of the plate from seated, degrees; null where the log has none.</summary>
    public double? ThrottleDegrees { get; init; }

    /// <summary>Mean absolute pressure behind the plate, Pa; null where the log has none.</summary>
    public double? ManifoldPascals { get; init; }

    /// <summary>Mean λ, transport delay taken off.</summary>
    public required double Lambda { get; init; }

    /// <summary>Standard error of <see cref="Lambda"/> with the sensor's own share, 1.</summary>
    public required double LambdaSigma { get; init; }

    /// <summary>Rows averaged.</summary>
    public required int Count { get; init; }

    /// <summary>Start of the stretch from the beginning of the log, s.</summary>
    public double StartSeconds { get; init; }

    /// <summary>Length of the stretch, s.</summary>
    public double Seconds { get; init; }

    /// <summary>Why this point should not decide alone, in plain words; empty where nothing speaks against it.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];
}
