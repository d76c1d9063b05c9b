namespace Tickover.Physics.Tanks;

/// <summary>Something that may be off between a shape and a fill, as found.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Value">How far off, in its unit: a part, m³, m or rad.</param>
/// <param name="Deviation">Standard deviation of that.</param>
/// <param name="Before">What was thought usual, one standard deviation.</param>
public readonly record struct FillUnknown(FillUnknownKind Kind, double Value, double Deviation, double Before)
{
    /// <summary>Whether it is further off than usual, and surely.</summary>
    public bool Unusual => Math.Abs(Value) > 2 * Before && Math.Abs(Value) > 2 * Deviation;
}
