namespace Tickover.Workshop.Balance;

/// <summary>What a round says: mean, spread, and how every barrel stands.</summary>
public sealed record RoundAccount
{
    /// <summary>The round.</summary>
    public required BalanceRound Round { get; init; }

    /// <summary>Whether it has every barrel of the engine.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Mean over the barrels read, kg/h; zero where no air was read.</summary>
    public required double Mean { get; init; }

    /// <summary>Largest less smallest, kg/h.</summary>
    public required double Spread { get; init; }

    /// <summary>Lowest and highest engine speed noted, rpm; null where none is.</summary>
    public (double Low, double High)? Rpm { get; init; }

    /// <summary>Whether the engine drifted too far, or the readings cannot be one round.</summary>
    public bool IsVoid => Why.Length > 0;

    /// <summary>Why it is void and what to do; empty where it is not.</summary>
    public string Why { get; init; } = "";

    /// <summary>What is odd about it without making it void.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The barrels in order of number, those not read included.</summary>
    public required IReadOnlyList<BarrelStanding> Barrels { get; init; }

    /// <summary>Mean of each bank, kg/h, by number of bank from 1.</summary>
    public IReadOnlyList<double> BankMeans { get; init; } = [];

    /// <summary>Whether every barrel was read, lies within its limit, and the banks theirs.</summary>
    public bool AllWithin { get; init; }

    /// <summary>What was moved since the round before, such as "Carburettor 2, stop screw: in ⅛"; empty where nothing was.</summary>
    public string Before { get; init; } = "";
}
