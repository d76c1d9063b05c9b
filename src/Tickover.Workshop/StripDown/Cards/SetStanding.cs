namespace Tickover.Workshop.StripDown.Cards;

/// <summary>How the places of a set lie to each other in one measure.</summary>
public enum SetStanding
{
    /// <summary>Nothing is noted of it.</summary>
    NotNoted,

    /// <summary>Noted, but no two need be alike, or only one is noted.</summary>
    NotCompared,

    /// <summary>All that are noted agree, or lie within what is accepted.</summary>
    Alike,

    /// <summary>The instrument's band straddles what is accepted.</summary>
    CannotBeTold,

    /// <summary>At least one differs, or lies outside what is accepted.</summary>
    Differs,
}
