namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What is accepted; a document may write its own. Common practice of the trade (trade report 1.11 and 1.13) unless another origin is said.</summary>
public sealed record WearLimits
{
    /// <summary>Radial clearance of a spindle up to which it is good, mm.</summary>
    public double SpindleGood { get; init; } = 0.05;

    /// <summary>Up to which it is usable, mm.</summary>
    public double SpindleUsable { get; init; } = 0.10;

    /// <summary>Beyond which it is bushed anew, mm.</summary>
    public double SpindleRebush { get; init; } = 0.15;

    /// <summary>"A hair of light" past a shut plate, mm.</summary>
    public double Light { get; init; } = 0.05;

    /// <summary>Closed angle off the middle of the set, degrees (assumed).</summary>
    public double Angle { get; init; } = 1;

    /// <summary>Bore across the spindle over bore along it, mm (assumed).</summary>
    public double Oval { get; init; } = 0.05;

    /// <summary>Gap under a straight edge on a flange, mm.</summary>
    public double Flange { get; init; } = 0.05;

    /// <summary>How long a needle holds a hand vacuum, s.</summary>
    public double Hold { get; init; } = 15;

    /// <summary>What may seep past a needle, ml/h (assumed).</summary>
    public double Seep { get; init; } = 1;

    /// <summary>Pump shots of barrels off the middle of the set, per cent: the trade's 10 % between barrels.</summary>
    public double Pump { get; init; } = 10;

    /// <summary>Air one by-pass screw can even out between the barrels of a carburettor, kg/h.</summary>
    public double BypassKgh { get; init; } = 1;
}
