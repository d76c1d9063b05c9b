using Tickover.Physics.Gauges;
using Tickover.Physics.Linkages;

namespace Tickover.Workshop.Tanks.Parts;

/// <summary>The sender as described.</summary>
public sealed record SenderPart
{
    /// <summary>Number of the tank it is in; null where no tank is described.</summary>
    public int? Tank { get; init; }

    /// <summary>Its family; null where it is not known.</summary>
    public SenderFamily? Family { get; init; }

    /// <summary>Its arm, heights above the foot of the tank's stick; null where it was not measured.</summary>
    public FloatArm? Arm { get; init; }

    /// <summary>Where its float hangs, level with the foot of the stick, m; null without a tank.</summary>
    public SpaceVector? Place { get; init; }
}
