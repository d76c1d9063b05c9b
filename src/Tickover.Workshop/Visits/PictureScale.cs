namespace Tickover.Workshop.Visits;

/// <summary>How large a picture is wanted.</summary>
public enum PictureScale
{
    /// <summary>As kept, at most 2,400 pixels along the longer side.</summary>
    Whole,

    /// <summary>For lists, at most 480 pixels along the longer side.</summary>
    Small,
}
