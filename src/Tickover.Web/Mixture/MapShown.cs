namespace Tickover.Web.Mixture;

/// <summary>Which of the three maps is on the page.</summary>
public enum MapShown
{
    /// <summary>The car as it is.</summary>
    Fitted,

    /// <summary>The car as it would be.</summary>
    Trial,

    /// <summary>Trial less fitted.</summary>
    Difference,
}
