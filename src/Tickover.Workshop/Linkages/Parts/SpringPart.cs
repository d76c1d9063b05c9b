namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A return spring on a throttle spindle.</summary>
/// <param name="TorqueNewtonMetres">Torque with the plates on their stop, N m.</param>
/// <param name="RateNewtonMetresPerDegree">More torque for each degree opened, N m.</param>
/// <param name="AlongMillimetres">Where along the spindle it is hooked in, mm.</param>
public sealed record SpringPart(double TorqueNewtonMetres, double RateNewtonMetresPerDegree, double AlongMillimetres);
