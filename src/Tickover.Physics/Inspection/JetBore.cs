namespace Tickover.Physics.Inspection;

/// <summary>Bore of a jet that would pass what the bench measured.</summary>
/// <param name="DiameterMetres">Equivalent bore, m.</param>
/// <param name="DeviationMetres">Its standard deviation, m, the coefficient's among it.</param>
/// <param name="RepeatMetres">What of the deviation is not shared by jets measured on the same bench, with the same liquid and shape: what tells two jets of a set apart, m.</param>
/// <param name="DischargeCoefficient">Coefficient of discharge taken, 1.</param>
/// <param name="Validity">Whether the coefficient's formula was used within its range.</param>
public readonly record struct JetBore(double DiameterMetres, double DeviationMetres, double RepeatMetres, double DischargeCoefficient, Validity Validity);
