namespace Tickover.Reports.Mixture;

/// <summary>The sizes a picture is drawn in; text is 14 px or more where it is shown at that width.</summary>
public enum PictureSize
{
    /// <summary>For a tablet or a desk, 772 px wide.</summary>
    Full,

    /// <summary>For a phone, 366 px wide.</summary>
    Phone,
}
