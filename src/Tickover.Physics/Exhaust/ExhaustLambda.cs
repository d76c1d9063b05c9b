namespace Tickover.Physics.Exhaust;

/// <summary>λ from four gases, with what it is worth.</summary>
/// <param name="Value">Air over what the fuel needs, 1; finite.</param>
/// <param name="Validity">Whether it lies where the formula is stated, 0.7 to 1.6.</param>
public readonly record struct ExhaustLambda(double Value, Validity Validity);
