namespace Tickover.Records.Opening;

/// <summary>Whether a record may be begun where there is none.</summary>
public enum Beginning
{
    /// <summary>There has to be one.</summary>
    Expected,

    /// <summary>A new one may be begun where there never was one.</summary>
    Allowed,
}
