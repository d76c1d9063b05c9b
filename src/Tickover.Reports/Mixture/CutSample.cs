using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>One place along a cut.</summary>
internal sealed record CutSample
{
    /// <summary>Speed in rpm or opening in degrees, whichever the cut goes along.</summary>
    internal required double Along { get; init; }

    /// <summary>Fitted λ; null without an answer.</summary>
    internal required double? Fitted { get; init; }

    /// <summary>Trial λ; null without a trial or an answer.</summary>
    internal required double? Trial { get; init; }

    /// <summary>The target here.</summary>
    internal required LambdaBand Target { get; init; }

    /// <summary>The circuit that feeds most, as fitted.</summary>
    internal required FuelCircuit Feeding { get; init; }

    /// <summary>Why there is no fitted answer; null where there is one.</summary>
    internal required NoAnswer? Why { get; init; }
}
