namespace Tickover.Physics.Sending;

/// <summary>A sender in one of the tanks.</summary>
/// <param name="Side">Which tank.</param>
/// <param name="Place">Where the float rides; its height is not used.</param>
/// <param name="Arm">Arm, stops and resistance.</param>
public sealed record TankSender(TankSide Side, TankPlace Place, FloatArm Arm);
