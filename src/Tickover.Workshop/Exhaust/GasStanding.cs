namespace Tickover.Workshop.Exhaust;

/// <summary>What a gas reading is worth for the mixture; the greater, the worse.</summary>
public enum GasStanding
{
    /// <summary>Nothing in the four gases speaks against it.</summary>
    Good = 0,

    /// <summary>To be settled by one more reading.</summary>
    Doubtful = 1,

    /// <summary>It says nothing of the mixture: change no jet on it.</summary>
    Spoilt = 2,
}
