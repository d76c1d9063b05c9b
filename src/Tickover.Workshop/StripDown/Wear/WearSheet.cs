using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What was measured on a set of stripped carburettors.</summary>
public sealed record WearSheet
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The engine at idle.</summary>
    public required IdlePoint Idle { get; init; }

    /// <summary>What micrometer and bore gauge are good to, ± mm (90 %).</summary>
    public required double Micrometer { get; init; }

    /// <summary>What is accepted.</summary>
    public required WearLimits Limits { get; init; }

    /// <summary>The car; null where none is named.</summary>
    public Car? Car { get; init; }

    /// <summary>Tubes to compare with; null where no shelf is named.</summary>
    public JetShelf? Shelf { get; init; }

    /// <summary>The carburettors in engine order.</summary>
    public required IReadOnlyList<WornBody> Bodies { get; init; }

    /// <summary>The barrels in engine order.</summary>
    public required IReadOnlyList<WornBarrel> Barrels { get; init; }
}
