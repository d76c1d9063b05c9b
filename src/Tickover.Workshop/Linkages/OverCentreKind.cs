namespace Tickover.Workshop.Linkages;

/// <summary>How a rod comes to stand in line with a lever.</summary>
public enum OverCentreKind
{
    /// <summary>The driving lever passes the rod's line: the plates turn back while the pedal goes on.</summary>
    Over,

    /// <summary>The driven lever comes into the rod's line: nothing moves on, and a spring may not bring it back.</summary>
    Dead,

    /// <summary>Nearly so: less than <see cref="OverCentre.NearDegrees"/> from the line.</summary>
    Near,
}
