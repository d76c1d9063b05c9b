namespace Tickover.Physics.Flow;

/// <summary>The throat of a choke at a given flow.</summary>
/// <param name="ThroatPressurePascals">Throat static pressure, Pa; the sonic one where the flow is more than the throat can pass.</param>
/// <param name="IsChoked">The throat is sonic.</param>
/// <param name="IsTooMuch">The throat cannot pass this flow at this upstream pressure.</param>
/// <param name="Iterations">Steps of Newton's rule.</param>
public readonly record struct VenturiPoint(double ThroatPressurePascals, bool IsChoked, bool IsTooMuch, int Iterations);
