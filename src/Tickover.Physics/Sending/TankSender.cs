using Tickover.Physics.Gauges;

namespace Tickover.Physics.Sending;

/// <summary>A float arm at its place in a tank.</summary>
/// <param name="Place">Where the float swims; its height does not count.</param>
/// <param name="Arm">The arm.</param>
public sealed record TankSender(TankPlace Place, FloatArm Arm);
