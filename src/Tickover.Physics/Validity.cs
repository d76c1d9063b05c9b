namespace Tickover.Physics;

/// <summary>Whether a formula was used within its range, and if not, which input left it.</summary>
/// <remarks><c>default</c> is <see cref="Inside"/>. Nothing is clamped: the value is the formula's own, this says what it is worth.</remarks>
/// <param name="Kind">Inside, extrapolated or outside.</param>
/// <param name="Quantity">The input that left its range, with its unit; empty when inside.</param>
/// <param name="Value">What was put in, in that unit.</param>
/// <param name="Minimum">Lower end of the stated range, in that unit.</param>
/// <param name="Maximum">Upper end of the stated range, in that unit.</param>
public readonly record struct Validity(ValidityKind Kind, string? Quantity, double Value, double Minimum, double Maximum)
{
    /// <summary>All inputs within their ranges.</summary>
    public static Validity Inside => default;

    /// <summary>The worse of two verdicts; of two equal ones the first.</summary>
    /// <param name="other">The verdict on another input.</param>
    /// <returns>The verdict that counts for both.</returns>
    public Validity And(Validity other) => other.Kind > Kind ? other : this;

    /// <summary>The verdict on one input with a stated range inside a wider one where the formula still behaves.</summary>
    /// <param name="quantity">Name and unit of the input.</param>
    /// <param name="value">The input.</param>
    /// <param name="stated">Range the source states, lower and upper end.</param>
    /// <param name="usable">Range in which the formula still behaves.</param>
    /// <returns>Inside, extrapolated or outside; not-a-number counts as outside.</returns>
    public static Validity Of(string quantity, double value, (double Minimum, double Maximum) stated, (double Minimum, double Maximum) usable)
    {
        if (value >= stated.Minimum && value <= stated.Maximum)
        {
            return Inside;
        }

        var usableStill = value >= usable.Minimum && value <= usable.Maximum;
        return new Validity(usableStill ? ValidityKind.Extrapolated : ValidityKind.Outside, quantity, value, stated.Minimum, stated.Maximum);
    }

    /// <summary>The verdict on one input whose formula ends with its stated range.</summary>
    /// <param name="quantity">Name and unit of the input.</param>
    /// <param name="value">The input.</param>
    /// <param name="stated">Range the source states, lower and upper end.</param>
    /// <returns>Inside or outside; not-a-number counts as outside.</returns>
    public static Validity Of(string quantity, double value, (double Minimum, double Maximum) stated) => Of(quantity, value, stated, stated);
}
