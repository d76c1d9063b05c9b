namespace Tickover.Workshop.Calibration;

/// <summary>A property of the car that no rule can measure and that readings of the mixture tell something about.</summary>
/// <param name="Key">Name in documents, such as <c>mainDischarge</c>.</param>
/// <param name="Label">In words.</param>
/// <param name="PriorDeviation">Standard deviation before any reading: of the natural logarithm for factors, else in <paramref name="Unit"/>.</param>
/// <param name="IsFactor">Whether it multiplies the model's own value, so that zero means "as the model has it"; else it is added.</param>
/// <param name="Unit">Unit of what is added; empty for factors.</param>
/// <param name="Origin">Where the deviation comes from.</param>
public sealed record CalibrationUnknown(string Key, string Label, double PriorDeviation, bool IsFactor, string Unit, string Origin)
{
    /// <summary>The value as it acts: a factor, or what is added in <see cref="Unit"/>.</summary>
    /// <param name="value">Value in the calibration, zero at the prior.</param>
    /// <returns>The factor, or the value itself.</returns>
    public double Acting(double value) => IsFactor ? Math.Exp(value) : value;
}
