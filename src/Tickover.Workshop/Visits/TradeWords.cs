namespace Tickover.Workshop.Visits;

/// <summary>Whose words of the trade are used.</summary>
public enum TradeWords
{
    /// <summary>Choke, spindle, petrol.</summary>
    British,

    /// <summary>Venturi, shaft, gasoline.</summary>
    American,
}
