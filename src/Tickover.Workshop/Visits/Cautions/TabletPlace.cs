namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Where the tablet is during a step.</summary>
public enum TabletPlace
{
    /// <summary>Left outside the vapour zone: it can light the vapour.</summary>
    OutsideZone,

    /// <summary>Put aside, out of the hands: the step needs both hands and eyes.</summary>
    PutAside,

    /// <summary>May stay in hand.</summary>
    InHand,
}
