namespace Tickover.Physics.Linkages;

/// <summary>One way a four-bar goes together at a position of its crank.</summary>
/// <param name="CouplerRadians">θ3, of the rod, radians, −π to π.</param>
/// <param name="FollowerRadians">θ4, of the driven lever, radians, −π to π.</param>
public readonly record struct FourBarPose(double CouplerRadians, double FollowerRadians);
