namespace Tickover.Workshop.StripDown.Wear;

/// <summary>How bad it is.</summary>
public enum WearGrade
{
    /// <summary>As it should be.</summary>
    Good = 0,

    /// <summary>Usable: worn, but nothing need be done.</summary>
    Usable = 1,

    /// <summary>Worn: to be decided by what it does at idle.</summary>
    Worn = 2,

    /// <summary>Must not stay.</summary>
    Bad = 3,
}
