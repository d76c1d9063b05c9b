using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Build;

/// <summary>What bench settings are worked out from.</summary>
public sealed record BuildSheet
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The car.</summary>
    public required Car Car { get; init; }

    /// <summary>The engine at idle.</summary>
    public required IdlePoint Idle { get; init; }

    /// <summary>λ wanted at idle.</summary>
    public required double Lambda { get; init; }

    /// <summary>Distance from the spindle to the tip of the stop screw, mm; null where it is not told.</summary>
    public double? StopArm { get; init; }

    /// <summary>Pitch of the stop screw, mm a turn; null where it is not told.</summary>
    public double? StopPitch { get; init; }

    /// <summary>Arm of the levers the rods move, mm; null where it is not told.</summary>
    public double? RodArm { get; init; }

    /// <summary>How far a rod may be off the middle one, mm.</summary>
    public required double RodLimit { get; init; }

    /// <summary>The rods that are to be of one length.</summary>
    public required IReadOnlyList<BuildRod> Rods { get; init; }
}
