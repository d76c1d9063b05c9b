namespace Tickover.Workshop.Visits;

/// <summary>Who has the ball.</summary>
public enum WaitsOn
{
    /// <summary>We have.</summary>
    Us,

    /// <summary>The owner has to answer.</summary>
    Owner,

    /// <summary>A part has to come.</summary>
    Parts,

    /// <summary>Something has to cure, soak or settle.</summary>
    Clock,
}
