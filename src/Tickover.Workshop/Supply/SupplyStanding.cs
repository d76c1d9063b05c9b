namespace Tickover.Workshop.Supply;

/// <summary>How a figure of a fuel supply stands against what is wanted of it.</summary>
public enum SupplyStanding
{
    /// <summary>Enough, with something to spare.</summary>
    Enough = 0,

    /// <summary>Enough, with little to spare.</summary>
    Close = 1,

    /// <summary>Not enough.</summary>
    Short = 2,

    /// <summary>Nothing is known that would tell.</summary>
    Unknown = 3,
}
