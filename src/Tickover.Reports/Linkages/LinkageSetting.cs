namespace Tickover.Reports.Linkages;

/// <summary>Which settings of a linkage a picture shows.</summary>
public enum LinkageSetting
{
    /// <summary>As it was found and described.</summary>
    AsFound,

    /// <summary>With the moves advised made.</summary>
    AsAdvised,
}
