using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance;

/// <summary>A car's balancing so far: what stands on the engine, and all that was read and done, in order.</summary>
public sealed record BalanceBook
{
    /// <summary>What stands on the engine.</summary>
    public required EnginePlan Plan { get; init; }

    /// <summary>Rounds, turns and acts in the order they happened.</summary>
    public required IReadOnlyList<BalanceStep> Steps { get; init; }

    /// <summary>What the instruments are good to.</summary>
    public MeterSettings Meter { get; init; } = new();

    /// <summary>The limits worked to.</summary>
    public BalanceLimits Limits
    {
        get => field ?? BalanceLimits.For(Plan);
        init;
    }
}
