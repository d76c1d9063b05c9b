using Tickover.Reports.Mixture;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>What the drawing of an engine from above shows.</summary>
public sealed record EngineView
{
    /// <summary>What stands on the engine.</summary>
    public required EnginePlan Plan { get; init; }

    /// <summary>The rings; a barrel without one shows an empty ring.</summary>
    public IReadOnlyList<RingView> Rings { get; init; } = [];

    /// <summary>The thing to turn; null where nothing is.</summary>
    public EngineMark? Mark { get; init; }

    /// <summary>Whether the rods between carburettors are off.</summary>
    public bool RodsOff { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>Begins every id inside; letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "engine";

    /// <summary>Where choosing a part leads: "barrel:4" for a ring, else the key of an adjuster. Null leaves the drawing to be looked at only.</summary>
    public Func<string, string>? PartAddress { get; init; }
}
