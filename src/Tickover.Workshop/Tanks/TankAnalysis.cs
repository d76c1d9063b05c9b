using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks;

/// <summary>Everything tanks, sender and gauge say of themselves.</summary>
public sealed record TankAnalysis
{
    /// <summary>The tanks as described.</summary>
    public required TankSet Set { get; init; }

    /// <summary>The strapping table; empty without tanks.</summary>
    public required IReadOnlyList<StrappingLine> Table { get; init; }

    /// <summary>Fuel the pick-up cannot reach with the car level, l; null without a pick-up.</summary>
    public double? UnusableLitres { get; init; }

    /// <summary>The same for the ways the car stands.</summary>
    public required IReadOnlyList<StanceLine> Stances { get; init; }

    /// <summary>The fill against the shape; null without one.</summary>
    public FillFit? Fill { get; init; }

    /// <summary>Sender and gauge; null without readings.</summary>
    public SenderVerdict? Sender { get; init; }

    /// <summary>Whether ohms and needle of the table were read (true) or follow from the families (false).</summary>
    public required bool IsNeedleRead { get; init; }

    /// <summary>What the tanks come to.</summary>
    public IReadOnlyList<TankAdvice> TankAdvice { get; init; } = [];

    /// <summary>What sender and gauge come to.</summary>
    public IReadOnlyList<TankAdvice> SenderAdvice { get; init; } = [];
}
