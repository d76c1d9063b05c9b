namespace Tickover.Physics.Linkages;

/// <summary>What pulls a spindle back to its stop.</summary>
/// <param name="TorqueNewtonMetres">Torque with the shaft at rest, N m; not negative.</param>
/// <param name="RateNewtonMetresPerRadian">More torque for each radian opened, N m/rad.</param>
/// <param name="AlongMetres">Where along the shaft it takes hold, m.</param>
/// <param name="Sense">Which way the shaft opens: 1 right-handed, −1 left-handed.</param>
public sealed record ReturnSpring(double TorqueNewtonMetres, double RateNewtonMetresPerRadian, double AlongMetres, int Sense);
