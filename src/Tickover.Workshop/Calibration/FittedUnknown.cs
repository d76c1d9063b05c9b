namespace Tickover.Workshop.Calibration;

/// <summary>What the readings say of one unknown.</summary>
/// <param name="Unknown">Which.</param>
/// <param name="Value">Value, zero at the prior.</param>
/// <param name="Deviation">Standard deviation left.</param>
public sealed record FittedUnknown(CalibrationUnknown Unknown, double Value, double Deviation)
{
    private const double HardlyMoved = 0.85;

    /// <summary>Part of the prior's deviation that is left, 1: near 1 the readings say nothing of it.</summary>
    public double Left => Deviation / Unknown.PriorDeviation;

    /// <summary>Whether the readings tell anything worth having of it.</summary>
    public bool IsTold => Left < HardlyMoved;
}
