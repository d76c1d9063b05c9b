namespace Tickover.Workshop.Visits;

/// <summary>What an odometer counts.</summary>
public enum OdometerUnit
{
    /// <summary>Miles.</summary>
    Miles,

    /// <summary>Kilometres.</summary>
    Kilometres,
}
