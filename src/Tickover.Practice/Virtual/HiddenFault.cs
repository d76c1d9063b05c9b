using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>One fault built into the engine.</summary>
internal sealed class HiddenFault
{
    /// <summary>What and where.</summary>
    public required FaultPlace Place { get; init; }

    /// <summary>How big, in words.</summary>
    public required string Size { get; init; }

    /// <summary>Takes it out of the engine.</summary>
    public required Action Undo { get; init; }

    /// <summary>Whether it was mended.</summary>
    public bool Mended { get; set; }
}
